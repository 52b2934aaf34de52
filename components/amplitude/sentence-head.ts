/** Words as they stand at the head of a sentence: `The Sun`. */
export function atHead(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
