import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberDrill } from '../../../components/drill/drill.js';
import type { LubberElement } from '../../../components/shared/lubber-element.js';
import { subjects } from '../../support/scenes.js';
import { input, must, root, type } from '../../support/in-widget.js';

// Widgets in a form: JSON text of what lubber-result tells. The inputs are invented.

interface Around {
  readonly form: HTMLFormElement;
  readonly sight: LubberAmplitude;
}

async function inForm(bearing = '113.5'): Promise<Around> {
  const form = await fixture<HTMLFormElement>(html`<form>
    <fieldset>
      <lubber-amplitude name="sight" latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" bearing=${bearing}></lubber-amplitude>
    </fieldset>
    <input name="watch" value="morning" />
  </form>`);
  const sight = form.querySelector('lubber-amplitude') as LubberAmplitude;
  await sight.updateComplete;
  return { form, sight };
}

const submitted = (form: HTMLFormElement): string | null => new FormData(form).get('sight') as string | null;

describe('the value of a widget in a form', () => {
  it('is the detail of its event as JSON text', async () => {
    const { form, sight } = await inForm('');
    expect([...new FormData(form).keys()]).to.deep.equal(['watch']);
    let detail: unknown = null;
    sight.addEventListener('lubber-result', (event) => (detail = event.detail));
    await type(sight, 'bearing', '113.5');
    expect(JSON.parse(submitted(form) ?? 'null')).to.deep.equal(JSON.parse(JSON.stringify(detail)));
    expect(JSON.parse(submitted(form) ?? 'null')).to.have.property('widget', 'lubber-amplitude');
  });

  it('goes with the result', async () => {
    const { form, sight } = await inForm();
    expect(submitted(form)).not.to.equal(null);
    await type(sight, 'latitude', '91N');
    expect(submitted(form)).to.equal(null);
  });

  it('is not submitted without a name, and follows a new one', async () => {
    const { form, sight } = await inForm();
    sight.removeAttribute('name');
    expect(submitted(form)).to.equal(null);
    sight.name = 'sunrise';
    await sight.updateComplete;
    expect(new FormData(form).has('sunrise')).to.equal(true);
  });

  it('is there at once in a form the widget is moved into', async () => {
    const { form, sight } = await inForm();
    const other = document.createElement('form');
    form.after(other);
    other.append(sight);
    await sight.updateComplete;
    expect(submitted(form)).to.equal(null);
    expect(submitted(other)).not.to.equal(null);
    other.remove();
  });

  it('of a drill is its score, from the first answer on', async () => {
    const form = await fixture<HTMLFormElement>(html`<form><lubber-drill name="sight" kind="polarity" seed="4711" count="2" attempts="1"></lubber-drill></form>`);
    const drill = form.querySelector('lubber-drill') as LubberDrill;
    await drill.updateComplete;
    expect(submitted(form)).to.equal(null);
    const heard: unknown[] = [];
    drill.addEventListener('lubber-score', (event) => heard.push(event.detail));
    must(root(drill).querySelector<HTMLInputElement>('.questions input')).click();
    must(root(drill).querySelector<HTMLButtonElement>('#check')).click();
    await drill.updateComplete;
    const value = JSON.parse(submitted(form) ?? 'null') as { widget: string; complete: boolean };
    expect(heard.length).to.equal(1);
    expect(value).to.deep.equal({ widget: 'lubber-drill', ...(heard[0] as object) });
    expect(value.complete).to.equal(false);
    drill.required = true;
    await drill.updateComplete;
    expect(drill.checkValidity()).to.equal(false);
    form.reset();
    await drill.updateComplete;
    expect(submitted(form)).to.equal(null);
  });
});

describe('a result that is required', () => {
  it('is asked for in words, with what is missing', async () => {
    const { form, sight } = await inForm('');
    expect(form.checkValidity()).to.equal(true);
    sight.required = true;
    await sight.updateComplete;
    expect(form.checkValidity()).to.equal(false);
    expect(sight.validity?.valueMissing).to.equal(true);
    expect(sight.validationMessage).to.match(/^A result is asked for here\. Still needed: Bearing of the Sun by compass\.$/);
    expect(sight.matches(':invalid')).to.equal(true);
    await type(sight, 'bearing', '113.5');
    expect(form.checkValidity()).to.equal(true);
    expect(sight.validationMessage).to.equal('');
  });

  it('is asked for in the language of the page', async () => {
    const { sight } = await inForm('');
    sight.lang = 'es';
    sight.required = true;
    await sight.updateComplete;
    // No catalogue is added on this page: English stands in, and nothing breaks.
    expect(sight.validationMessage).to.match(/asked for/);
  });

  // Without a form nobody heard that nothing is required any more.
  it('is asked for no more once it is not required, in no form too', async () => {
    const variation = await fixture<LubberElement>(html`<lubber-variation required></lubber-variation>`);
    expect(variation.checkValidity()).to.equal(false);
    variation.required = false;
    await variation.updateComplete;
    expect([variation.checkValidity(), variation.validationMessage]).to.deep.equal([true, '']);
  });

  // A page that asked whether all is well had the next click go to the first empty field.
  it('may be asked for by the page time and again, and the user still goes where he clicks', async () => {
    const sight = await fixture<LubberAmplitude>(html`<lubber-amplitude required></lubber-amplitude>`);
    for (let time = 0; time < 3; time++) expect(sight.checkValidity()).to.equal(false);
    await new Promise((resolve) => setTimeout(resolve, 20));
    input(sight, 'bearing').focus();
    expect(root(sight).activeElement?.id).to.equal('bearing');
    expect(sight.hasAttribute('tabindex')).to.equal(false);
    // The tabindex is the page's from now on.
    sight.tabIndex = 0;
    input(sight, 'bearing').blur();
    expect(sight.getAttribute('tabindex')).to.equal('0');
  });
});

describe('a form that is reset', () => {
  it('gives back what the page had given, without an event', async () => {
    const { form, sight } = await inForm();
    const before = submitted(form);
    await type(sight, 'bearing', '200');
    await type(sight, 'latitude', '12N');
    await type(sight, 'date', 'no day');
    const heard: Event[] = [];
    sight.addEventListener('lubber-result', (event) => heard.push(event));
    form.reset();
    await sight.updateComplete;
    expect([input(sight, 'bearing').value, input(sight, 'latitude').value, input(sight, 'date').value]).to.deep.equal(['113.5', '48-17.0S', '2026-11-26']);
    expect(root(sight).querySelector('#date-problem')?.textContent).to.equal('');
    expect(submitted(form)).to.equal(before);
    expect(heard.length).to.equal(0);
  });

  it('leaves what the page has given since', async () => {
    const { form, sight } = await inForm();
    await type(sight, 'bearing', '200');
    sight.bearing = '114';
    await sight.updateComplete;
    form.reset();
    await sight.updateComplete;
    expect(input(sight, 'bearing').value).to.equal('114');
  });

  it('gives a transit its lines back, those added gone', async () => {
    const form = await fixture<HTMLFormElement>(html`<form><lubber-transit name="sight" charted="260" bearing="258"></lubber-transit></form>`);
    const transit = form.querySelector('lubber-transit') as LubberElement;
    await transit.updateComplete;
    const before = submitted(form);
    await type(transit, 'bearing-0', '2');
    must(root(transit).querySelector<HTMLButtonElement>('#add-line')).click();
    await transit.updateComplete;
    await type(transit, 'charted-1', '100');
    form.reset();
    await transit.updateComplete;
    expect([input(transit, 'charted-0').value, input(transit, 'bearing-0').value, root(transit).querySelector('#bearing-1')]).to.deep.equal(['260', '258', null]);
    expect(submitted(form)).to.equal(before);
  });

  it('gives a swing its rows back', async () => {
    const form = await fixture<HTMLFormElement>(html`<form><lubber-swing name="sight" rows=${'000\t1E\n090\t2E'}></lubber-swing></form>`);
    const swing = form.querySelector('lubber-swing') as LubberElement;
    await swing.updateComplete;
    await type(swing, 'reading-0', '5W');
    expect(input(swing, 'reading-0').value).to.equal('5W');
    form.reset();
    await swing.updateComplete;
    expect(input(swing, 'reading-0').value).to.equal('1E');
  });
});

/** What a browser has kept of a widget: whose it is, then name and text of each field. */
const keptOf = ({ localName, id, name }: LubberElement, typed: readonly (readonly [name: string, text: string])[]): string => JSON.stringify([`${localName} ${id} ${name}`, ...typed]);

describe('what was typed', () => {
  it('is taken up again where the browser has kept it, without an event', async () => {
    const { sight } = await inForm();
    const heard: Event[] = [];
    sight.addEventListener('lubber-result', (event) => heard.push(event));
    for (const [name, text] of [['bearing', '114.5'], ['latitude', 'half of it']] as const) {
      sight.formStateRestoreCallback(keptOf(sight, [[name, text]]));
      await sight.updateComplete;
      expect(input(sight, name).value).to.equal(text);
    }
    expect(root(sight).querySelector('#latitude-problem')?.textContent).to.match(/not understood/);
    for (const odd of ['', '[]', '{', '7', 'null', '{}', '[["bearing","1"]]', new FormData()]) sight.formStateRestoreCallback(odd);
    await sight.updateComplete;
    expect([sight.bearing, heard.length]).to.deep.equal(['114.5', 0]);
  });

  // Firefox counts the widgets of a form as they are defined, and gave the latitude of one to another.
  it('in another widget is not taken', async () => {
    const { form, sight } = await inForm();
    const other = document.createElement('lubber-variation');
    form.append(other);
    await other.updateComplete;
    other.formStateRestoreCallback(keptOf(sight, [['latitude', '12N']]));
    sight.formStateRestoreCallback(keptOf(Object.assign(document.createElement('lubber-amplitude'), { name: 'sunset' }), [['bearing', '200']]));
    await sight.updateComplete;
    expect([other.latitude, sight.bearing]).to.deep.equal([undefined, '113.5']);
  });

  // Where the script comes late a browser does so before anything is drawn; instant and lines of the page then came over it.
  it('prevails over what the page had given, drawn already or not', async () => {
    const form = await fixture<HTMLFormElement>(html`<form></form>`);
    const [sight, transit] = ['lubber-amplitude', 'lubber-transit'].map((tag) => document.createElement(tag)) as [LubberElement, LubberElement];
    sight.setAttribute('instant', '2026-11-26T08:52:40Z');
    transit.setAttribute('marks', '[{"charted":"260","bearing":"258"}]');
    form.append(sight, transit);
    sight.formStateRestoreCallback(keptOf(sight, [['date', '2026-11-25']]));
    transit.formStateRestoreCallback(keptOf(transit, [['lines', '[{"charted":"260","bearing":"257"}]']]));
    await transit.updateComplete;
    expect([input(sight, 'date').value, input(sight, 'time').value, input(transit, 'bearing-0').value]).to.deep.equal(['2026-11-25', '08:52:40', '257']);
    form.reset();
    await transit.updateComplete;
    expect([input(sight, 'date').value, input(transit, 'bearing-0').value]).to.deep.equal(['2026-11-26', '258']);
  });
});

/** What a browser keeps of a widget in a form while another page is shown. */
async function keptAfter(tag: string, typed: readonly (readonly [name: string, text: string])[], more?: (widget: LubberElement) => Promise<void>): Promise<string> {
  const { setFormValue } = ElementInternals.prototype;
  let kept = '';
  ElementInternals.prototype.setFormValue = function (...given) {
    kept = String(given[1]);
    setFormValue.apply(this, given);
  };
  try {
    const form = await fixture<HTMLFormElement>(html`<form></form>`);
    const widget = document.createElement(tag) as LubberElement;
    form.append(widget);
    for (const [name, text] of typed) widget.change(name, text);
    await widget.updateComplete;
    await more?.(widget);
  } finally {
    ElementInternals.prototype.setFormValue = setFormValue;
  }
  return kept;
}

describe('what stands in no field of its own', () => {
  const back = async (tag: string, kept: string): Promise<LubberElement> => {
    const widget = await fixture<LubberElement>(document.createElement(tag));
    widget.formStateRestoreCallback(kept);
    await widget.updateComplete;
    return widget;
  };

  // The lines of a transit were gone, and what had been chosen beside the fields.
  it('comes back too: the lines of a transit', async () => {
    const kept = await keptAfter('lubber-transit', [['compass', 'gyro'], ['kind-0', 'one-mark'], ['name-0', 'Lighthouse'], ['frontLatitude-0', '50-03N'], ['frontLongitude-0', 'half of it'], ['bearing-0', '002']]);
    const transit = await back('lubber-transit', kept);
    expect(['frontLatitude-0', 'frontLongitude-0', 'bearing-0', 'name-0'].map((name) => input(transit, name).value)).to.deep.equal(['50-03N', 'half of it', '002', 'Lighthouse']);
    expect(root(transit).querySelector('[id="frontLongitude-0-problem"]')?.textContent).to.match(/not understood/);
    expect((transit as LubberElement & { compass: string }).compass).to.equal('gyro');
  });

  it('comes back too: how an azimuth is placed, and a series', async () => {
    const azimuth = await back('lubber-azimuth', await keptAfter('lubber-azimuth', [['method', 'almanac'], ['gha', '320'], ['series', '19:50 150']]));
    expect(azimuth).to.include({ method: 'almanac', gha: '320', series: '19:50 150' });
  });

  it('comes back too: the readings of a swing, over those of the page and not over a draft', async () => {
    const read = (swing: LubberElement): unknown[] => ['reading-0', 'reading-1', 'use-1'].map((id) => (id === 'use-1' ? input(swing, id).checked : input(swing, id).value));
    const kept = await keptAfter('lubber-swing', [['headings', '16']], async (swing) => {
      await type(swing, 'reading-0', '5W');
      await type(swing, 'reading-1', 'half of it');
      for (const id of ['use-1', 'use-2']) input(swing, id).click();
      await swing.updateComplete;
    });
    const form = await fixture<HTMLFormElement>(html`<form><lubber-swing rows=${'000\t1E\n090\t2E'}></lubber-swing></form>`);
    const swing = form.querySelector('lubber-swing') as LubberElement;
    swing.formStateRestoreCallback(kept);
    await swing.updateComplete;
    expect(read(swing)).to.deep.equal(['5W', 'half of it', false]);
    // Another number of headings, as was chosen, would take a row without a reading for one merely planned.
    expect(input(swing, 'use-2').checked).to.equal(false);
    form.reset();
    await swing.updateComplete;
    expect(read(swing)).to.deep.equal(['1E', '2E', true]);
    localStorage.setItem('lubber-swing:form', JSON.stringify({ rows: [{ heading: '000', reading: '7E' }, { heading: '090', reading: '8E' }], settings: { headings: '16' } }));
    const drafted = await fixture<LubberElement>(html`<lubber-swing draft="form"></lubber-swing>`);
    drafted.formStateRestoreCallback(kept);
    await drafted.updateComplete;
    localStorage.removeItem('lubber-swing:form');
    expect(read(drafted)).to.deep.equal(['7E', '8E', true]);
  });

  it('comes back too: the bench of the iron', async () => {
    const iron = await back('lubber-iron', await keptAfter('lubber-iron', [['P', '0.05'], ['heel', '5']]));
    expect(iron).to.have.property('heel', '5');
    expect((iron as LubberElement & { state: Record<string, unknown> }).state).to.have.property('P', '0.05');
  });

  it('comes back too: how far a learner has come in a drill, in the exercises drawn', async () => {
    const written = (drill: Element): string | undefined => root(drill).querySelector<HTMLInputElement>('.questions input[type=text]')?.value;
    const kind = { kind: 'conversion', count: '2' };
    let seed: unknown;
    const kept = await keptAfter('lubber-drill', [], async (drill) => {
      Object.assign(drill, kind);
      await drill.updateComplete;
      await type(drill, root(drill).querySelector('.questions input[type=text]')?.id ?? '', '123');
      seed = (drill as LubberDrill).state?.seed;
    });
    const drill = (await back('lubber-drill', kept)) as LubberDrill;
    Object.assign(drill, kind);
    await drill.updateComplete;
    expect([drill.state?.seed, drill.state?.count, written(drill)]).to.deep.equal([seed, 2, '123']);
  });

  // Typed first and moved by the slider then, it is a number.
  it('comes back as it was left: the heading looked at', async () => {
    const kept = await keptAfter('lubber-deviation-curve', [['heading', '047']], async (curve) => {
      Object.assign(curve, { heading: 48 });
      await curve.updateComplete;
    });
    expect(input(await back('lubber-deviation-curve', kept), 'heading').value).to.equal('48');
  });

  // What the user had emptied, or taken off the bench, stood there again.
  it('comes back as it was left: a field of the page that was emptied', async () => {
    const kept = await keptAfter('lubber-amplitude', [['bearing', '113.5']], async (sight) => type(sight, 'bearing', ''));
    const form = await fixture<HTMLFormElement>(html`<form><lubber-amplitude bearing="113.5"></lubber-amplitude></form>`);
    const sight = form.querySelector('lubber-amplitude') as LubberAmplitude;
    sight.formStateRestoreCallback(kept);
    await sight.updateComplete;
    expect([input(sight, 'bearing').value, sight.bearing]).to.deep.equal(['', undefined]);
  });

  it('comes back as it was left: what is on the bench no more', async () => {
    const kept = await keptAfter('lubber-iron', [], async (iron) => {
      expect(input(iron, 'c').value).not.to.equal('0');
      await type(iron, 'c', '');
      expect(input(iron, 'c').value).to.equal('0');
    });
    expect(input(await back('lubber-iron', kept), 'c').value).to.equal('0');
  });
});

/** Ship and book keep their own and stay outside of a form. */
const tags = Object.keys(subjects).filter((tag) => !['lubber-record', 'lubber-ship'].includes(tag));

/** What can be moved in a disabled widget: where one looks, not what is entered. */
const looks = new Set(['cursor', 'state-text']);

describe('a disabled fieldset', () => {
  for (const tag of tags) {
    it(`leaves nothing to change in ${tag}, and nothing is submitted`, async () => {
      const form = await fixture<HTMLFormElement>(html`<form><fieldset></fieldset></form>`);
      const widget = document.createElement(tag) as LubberElement;
      widget.setAttribute('name', 'sight');
      const fieldset = form.querySelector('fieldset') as HTMLFieldSetElement;
      fieldset.append(widget);
      fieldset.disabled = true;
      await widget.updateComplete;
      await widget.updateComplete;
      const open = [...root(widget).querySelectorAll<HTMLInputElement>('input, select, textarea')]
        .filter((field) => !field.disabled && !field.readOnly && !looks.has(field.id) && !field.closest('.parts'))
        // A radio button that is chosen has nothing to change to.
        .filter((field) => !(field.type === 'radio' && field.checked))
        .map((field) => `${field.localName}#${field.id || field.name}`);
      expect(open).to.deep.equal([]);
      expect(widget.isDisabled).to.equal(true);
      expect(submitted(form)).to.equal(null);
      fieldset.disabled = false;
      await widget.updateComplete;
      expect(widget.isDisabled).to.equal(false);
    });
  }
});

describe('a browser without ElementInternals', () => {
  it('has widgets that work, outside of the form', async () => {
    const { attachInternals } = HTMLElement.prototype;
    Object.defineProperty(HTMLElement.prototype, 'attachInternals', { value: undefined, configurable: true, writable: true });
    try {
      const { form, sight } = await inForm();
      sight.required = true;
      await sight.updateComplete;
      expect(submitted(form)).to.equal(null);
      expect([sight.form, sight.validity, sight.checkValidity(), sight.reportValidity()]).to.deep.equal([null, undefined, true, true]);
      expect(sight.result).not.to.equal(null);
    } finally {
      HTMLElement.prototype.attachInternals = attachInternals;
    }
  });
});
