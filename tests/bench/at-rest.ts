/** Waits until the machine has no other work, or what else runs is measured too. */
import { cpus } from 'node:os';

/** A look at the processors is this long, milliseconds. */
const LOOK = 250;
/** As much of it they may be at work: this process looks, and the system never stands still. */
const AT_WORK = 0.1;
/** Looks in a row that find it so. */
const LOOKS = 2;
const GIVEN_UP_AFTER = 30_000;

function spent(): { readonly idle: number; readonly all: number } {
  const times = cpus().map((cpu) => cpu.times);
  const idle = times.reduce((sum, time) => sum + time.idle, 0);
  return { idle, all: idle + times.reduce((sum, { user, nice, sys, irq }) => sum + user + nice + sys + irq, 0) };
}

/** Throws where the machine does not come to rest within half a minute: its timings would be those of something else. */
export async function atRest(): Promise<void> {
  const end = performance.now() + GIVEN_UP_AFTER;
  for (let quiet = 0; quiet < LOOKS; ) {
    if (performance.now() > end) throw new Error('the machine has other work: nothing can be measured');
    const before = spent();
    await new Promise((resolve) => setTimeout(resolve, LOOK));
    const now = spent();
    quiet = 1 - (now.idle - before.idle) / (now.all - before.all) <= AT_WORK ? quiet + 1 : 0;
  }
}
