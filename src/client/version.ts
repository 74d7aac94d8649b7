import { version } from '../../package.json' with { type: 'json' };

/** Version of the program. */
export const VERSION: string = version;
