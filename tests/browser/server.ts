export { serveFolder } from '../../src/cli/serve.ts';
export type { StaticServer } from '../../src/cli/serve.ts';
