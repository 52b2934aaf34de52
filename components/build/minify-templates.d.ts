/** The module with the white space of its html, svg and css literals made short. */
export function minifyTemplates(source: string): string;
