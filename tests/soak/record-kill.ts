/**
 * Kills the browser with SIGKILL while a record book is being written, fifty times (or as
 * many as the first argument says), each at another moment, and counts what was lost.
 * Run with `node --import tsx tests/soak/record-kill.ts [times]`.
 */
import { killWhileWriting } from './kill-while-writing.js';
import { serveRecordPage } from './record-page.js';

const times = Number(process.argv[2] ?? 50);
/** From at once to three seconds, in another order of size each time. */
const moments = Array.from({ length: times }, (_, turn) => ({ after: Math.round(20 + ((turn * 619) % 1000) * 1.5), least: 0 }));
const page = await serveRecordPage();
let lost = 0;
let broken = 0;
let alarms = 0;
let last = { confirmed: 0, found: 0 };
await killWhileWriting(page.address, moments, (kill) => {
  lost += kill.lost;
  broken += kill.whole ? 0 : 1;
  alarms += kill.alarm ? 1 : 0;
  last = kill;
  console.log(`after ${kill.after} ms: ${kill.confirmed} confirmed, ${kill.found} found, ${kill.lost} lost, chain ${kill.whole ? 'whole' : 'broken'}${kill.alarm ? ', alarm' : ''}`);
});
page.close();
console.log(`${times} kills: ${last.confirmed} entries confirmed, ${last.found} found, ${lost} lost, ${broken} chains broken, ${alarms} false alarms`);
process.exitCode = lost + broken + alarms > 0 ? 1 : 0;
