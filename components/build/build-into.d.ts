/** Makes the whole of dist/ in a folder of the project, given by its path from there. */
export function buildInto(folder: string): Promise<void>;
