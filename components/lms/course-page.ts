/**
 * For a lesson of a course package, as a classic script after `lubberline.js`: reports every
 * drill of the page to the platform that opened it, and says how it stands in elements marked
 * `data-lubber-lms`. Links marked `data-lubber-alone` are taken away where a platform has its
 * own, and `data-lubber-return` leads back to it.
 */
import { translate } from '../shared/catalogue.js';
import { connectCmi5 } from './cmi5.js';
import type { LmsConnection, LmsOptions, LmsStatus } from './connection.js';
import { lmsMessages } from './lms-messages.js';
import { connectScorm } from './scorm.js';

function tell(status: LmsStatus): void {
  for (const place of document.querySelectorAll<HTMLElement>('[data-lubber-lms]')) {
    place.dataset['status'] = status;
    place.textContent = translate(document.documentElement.lang, lmsMessages, `lms.${status}`);
  }
  if (status === 'none') return;
  for (const link of document.querySelectorAll<HTMLElement>('[data-lubber-alone]')) link.hidden = true;
}

function showReturn(connection: LmsConnection): void {
  const { returnAddress } = connection;
  if (!returnAddress || !/^https?:/i.test(returnAddress)) return;
  for (const link of document.querySelectorAll<HTMLAnchorElement>('a[data-lubber-return]')) {
    link.href = returnAddress;
    link.hidden = false;
  }
}

function start(): void {
  const options: LmsOptions = { onStatus: tell };
  const isLaunched = new URLSearchParams(location.search).has('fetch');
  const connection = isLaunched ? connectCmi5(document, options) : connectScorm(document, options);
  void connection.ready.then(() => showReturn(connection));
}

// Imported where there is no page, it does nothing.
if (typeof document !== 'undefined') {
  if (document.readyState === 'loading') document.addEventListener('DOMContentLoaded', start);
  else start();
}
