import type { Server } from 'node:http';

export const strictPolicy: string;
export function serve(options?: { port?: number }): Promise<{ server: Server; address: string }>;
