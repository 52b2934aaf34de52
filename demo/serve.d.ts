import type { Server } from 'node:http';

export const strictPolicy: string;
export function serve(options?: { port?: number; folder?: string; policy?: string }): Promise<{ server: Server; address: string }>;
