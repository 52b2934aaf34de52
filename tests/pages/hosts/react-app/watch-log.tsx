import { useState } from 'react';
import type { FormEvent } from 'react';
import type { LubberResultEvent, ResultDetail } from 'lubberline';
import type { DeviationCard } from 'lubberline/core';
import type {} from 'lubberline/react';

const card: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 4, C: 1, D: 2, E: 0 } };
const courses = [
  { id: 1, heading: 100 },
  { id: 2, heading: 200 },
  { id: 3, heading: 300 },
];

/** A small app: an answer heard and shown, a curve that comes and goes, a list in either order, a form. */
export function WatchLog() {
  const [heard, setHeard] = useState<ResultDetail | null>(null);
  const [shown, setShown] = useState(false);
  const [turned, setTurned] = useState(false);
  const [sent, setSent] = useState('');
  const hear = (event: LubberResultEvent): void => setHeard(event.detail);
  const send = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    setSent(String(new FormData(event.currentTarget).get('sight')));
  };
  return (
    <>
      <h1>Watch log</h1>
      <form onSubmit={send}>
        <lubber-amplitude name="sight" required heightOfEye={18} variation={11} working="none" locked="body" onlubber-result={hear}></lubber-amplitude>
        <button id="send">Send</button>
      </form>
      <p id="told">{heard ? `Last result by ${heard.widget}` : 'Nothing yet'}</p>
      <button id="show" onClick={() => setShown(!shown)}>Curve</button>
      {shown && <lubber-deviation-curve card={card} heading={45}></lubber-deviation-curve>}
      <button id="turn" onClick={() => setTurned(!turned)}>Other order</button>
      {(turned ? [...courses].reverse() : courses).map(({ id, heading }) => (
        <lubber-conversion key={id} id={`course-${id}`} heading={heading} variation={-10} deviation={5}></lubber-conversion>
      ))}
      <output id="heard" hidden>{JSON.stringify(heard)}</output>
      <output id="sent" hidden>{sent}</output>
    </>
  );
}
