export const sights: readonly string[];
