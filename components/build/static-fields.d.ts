/** The module with static fields in place of static blocks that fill one. */
export function staticFields(source: string): string;
