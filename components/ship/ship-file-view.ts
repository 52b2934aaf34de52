import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';
import { writeShipFile } from './ship-file.js';
import type { ShipFile } from './ship-file.js';
import type { ShipFileDesk } from './ship-file-desk.js';

/** A name every file system takes. */
function fileNameOf(ship: string): string {
  // A page may give a number.
  const plain = String(ship).normalize('NFKD').replace(/[^\w -]/g, '').trim().replace(/\s+/g, '-').toLowerCase();
  return `${plain || 'ship'}.json`;
}

/** Hands the text to the browser as a file; a frame that may save none refuses in silence, and the text stays. */
function save(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser may still be reading it when the click returns.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** The ship as text to copy or paste, and as a file to save or open; `now` is the ship as she stands. */
export function shipFileView(host: LubberElement, desk: ShipFileDesk, now: () => ShipFile): TemplateResult {
  const onChosen = (event: Event): void => {
    const input = event.target as HTMLInputElement;
    const [chosen] = input.files ?? [];
    if (chosen) void desk.open(chosen);
    // The same file may be opened again after it was mended.
    input.value = '';
  };
  const onWrite = (): void => {
    desk.show(writeShipFile(now()));
    host.say(host.t('ship.file.written'));
  };
  return html`<details>
    <summary part="summary">${host.t('ship.file')}</summary>
    <p class="hint" id="file-hint">${host.t('ship.file.hint')}</p>
    <label class="legend" for="file">${host.t('ship.file.label')}</label>
    <textarea part="input"
      id="file"
      rows="6"
      dir="ltr"
      spellcheck="false"
      aria-describedby="file-hint file-problem"
      aria-invalid=${desk.problem ? 'true' : 'false'}
      .defaultValue=${desk.text}
      @input=${(event: Event) => (desk.text = (event.target as HTMLTextAreaElement).value)}
    ></textarea>
    <p class="problem" id="file-problem" role="alert" ?hidden=${!desk.problem}>${desk.problem}</p>
    <p class="row">
      <button part="button" type="button" id="write-ship" @click=${onWrite}>${host.t('ship.file.write')}</button>
      <button part="button" type="button" id="read-ship" @click=${() => desk.read()}>${host.t('ship.file.read')}</button>
      <button part="button" type="button" id="save-ship" @click=${() => save(writeShipFile(now()), fileNameOf(now().name))}>${host.t('ship.file.save')}</button>
      <label class="open-file">${host.t('ship.file.open')} <input part="input" type="file" id="open-ship" accept=".json,application/json,text/plain" @change=${onChosen} /></label>
    </p>
  </details>`;
}
