/** A page on paper. */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import type { Page } from 'puppeteer-core';

/** Pages of a PDF: each is one object of its own. */
export function pagesOf(pdf: Uint8Array): number {
  return (Buffer.from(pdf).toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;
}

/** The text of each page of a PDF where the machine has the tool for it; null where not. */
export function pageTexts(pdf: Uint8Array): readonly string[] | null {
  try {
    const text = execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf, encoding: 'utf8' });
    return text.split('\f').map((page) => page.replace(/\s+/g, ' '));
  } catch {
    return null;
  }
}

/** A word on paper and where it begins, points from the upper left corner of its page. */
export interface PrintedWord {
  readonly page: number;
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** The words of a PDF where the machine has the tool for it; null where not. */
export function wordsOf(pdf: Uint8Array): readonly PrintedWord[] | null {
  try {
    const text = execFileSync('pdftotext', ['-bbox', '-', '-'], { input: pdf, encoding: 'utf8' });
    return text.split('<page ').slice(1).flatMap((page, number) =>
      [...page.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>([^<]*)</g)].map(([, x, y, word = '']) => ({ page: number, text: word, x: Number(x), y: Number(y) })),
    );
  } catch {
    return null;
  }
}

/** The text of a whole PDF; null where it cannot be had. */
export const textOf = (pdf: Uint8Array): string | null => pageTexts(pdf)?.join(' ') ?? null;

export function print(page: Page): Promise<Uint8Array> {
  const edge = '10mm';
  return page.pdf({ format: 'A4', margin: { top: edge, right: edge, bottom: edge, left: edge } });
}

/** For looking at the paper: a folder named in the environment. */
export function keep(name: string, pdf: Uint8Array): void {
  const folder = process.env['LUBBERLINE_PAPER'];
  if (folder) writeFileSync(`${folder}/${name}.pdf`, pdf);
}
