import { CUSTOM_ELEMENTS_SCHEMA, Component, computed, signal } from '@angular/core';
import type { LubberResultEvent, ResultDetail } from 'lubberline';
import type { DeviationCard } from 'lubberline/core';

const courses = [
  { id: 1, heading: 100 },
  { id: 2, heading: 200 },
  { id: 3, heading: 300 },
];

/** A small app: an answer heard and shown, a curve that comes and goes, a list in either order, a form. */
@Component({
  selector: 'watch-log',
  schemas: [CUSTOM_ELEMENTS_SCHEMA],
  template: `
    <h1>Watch log</h1>
    <form (submit)="send($event)">
      <lubber-amplitude name="sight" required [heightOfEye]="18" [variation]="11" working="none" locked="body" (lubber-result)="hear($event)"></lubber-amplitude>
      <button id="send">Send</button>
    </form>
    <p id="told">{{ told() }}</p>
    <button id="show" (click)="shown.set(!shown())">Curve</button>
    @if (shown()) {
      <lubber-deviation-curve [card]="card" [heading]="45"></lubber-deviation-curve>
    }
    <button id="turn" (click)="turned.set(!turned())">Other order</button>
    @for (course of listed(); track course.id) {
      <lubber-conversion [id]="'course-' + course.id" [heading]="course.heading" [variation]="-10" [deviation]="5"></lubber-conversion>
    }
    <output id="heard" hidden>{{ asText(heard()) }}</output>
    <output id="sent" hidden>{{ sent() }}</output>
  `,
})
export class WatchLog {
  readonly card: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 4, C: 1, D: 2, E: 0 } };
  readonly heard = signal<ResultDetail | null>(null);
  readonly shown = signal(false);
  readonly turned = signal(false);
  readonly sent = signal('');
  readonly told = computed(() => (this.heard() ? `Last result by ${this.heard()?.widget}` : 'Nothing yet'));
  readonly listed = computed(() => (this.turned() ? [...courses].reverse() : courses));
  readonly asText = JSON.stringify;

  hear(event: LubberResultEvent): void {
    this.heard.set(event.detail);
  }

  send(event: Event): void {
    event.preventDefault();
    this.sent.set(String(new FormData(event.currentTarget as HTMLFormElement).get('sight')));
  }
}
