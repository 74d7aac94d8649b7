export { buildTypicalYear } from './buildTypicalYear.ts';
export type { BuildOptions, BuildPlace } from './buildTypicalYear.ts';
export { normalsProblems } from './normals.ts';
