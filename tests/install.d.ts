export const projectFolder: string;
export function packagesAreInstalled(folder?: string): boolean;
export function ensurePackages(): void;
export function ensureBrowsers(): string[];
export function findChromium(): string | undefined;
export function findFirefox(): string | undefined;
export function askedBrowsers(): ('chromium' | 'firefox')[];
