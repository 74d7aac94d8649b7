/** Name of the project file's format, and the version that is written. */
export const FORMAT = 'shadewright-project';
export const VERSION = 1;
