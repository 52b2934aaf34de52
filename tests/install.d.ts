export const projectFolder: string;
export function ensurePackages(): void;
export function ensureBrowsers(): void;
export function findChromium(): string | undefined;
export function findFirefox(): string | undefined;
