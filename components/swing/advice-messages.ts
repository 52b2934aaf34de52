import type { Catalogue } from '../shared/catalogue.js';

/** English of the advice on correctors. */
export const adviceMessages: Catalogue = {
  'swing.advice': 'Advice to a licensed adjuster',
  'swing.advice.standing':
    'Advice only: the manufacturer’s manual and a licensed compass adjuster prevail. In this order; check after every step, and swing again when all is done.',
  'swing.advice.none': 'No coefficient is large enough, 0.5° or more, for a corrector to be moved; or the headings do not determine them yet.',
  'swing.advice.source': 'Source: {source}.',
  'source.handbook-gazette': 'American Practical Navigator (Pub. 9, 1995), chapter 6: order of work and halving on the opposite heading; New Zealand Gazette 1906: which way the red ends go',
  'source.handbook-memory': 'American Practical Navigator (Pub. 9, 1995), chapter 6: order of work and halving on the opposite heading; which way: from memory',
  'source.memory': 'from memory',
  'source.memory-angle': 'from memory; the angle derived',
  'source.memory-hemispheres': 'from memory; the same in either hemisphere',
  'swing.advice.work': 'On {first} take out all that is seen, {seen}; then on {second}, where {left} should show, take out half of it, {half}.',
  'swing.advice.work.done': 'On {first} take out all that is seen, {seen}; then check on {second}, where nothing should be left to take out.',
  'swing.advice.clockwise': 'clockwise by {angle}',
  'swing.advice.anticlockwise': 'anticlockwise by {angle}',
  'swing.advice.magnet.red-forward': 'B {B}: fore-and-aft magnets below the card, red ends forward.',
  'swing.advice.magnet.red-aft': 'B {B}: fore-and-aft magnets below the card, red ends aft.',
  'swing.advice.magnet.red-starboard': 'C {C}: athwartship magnets below the card, red ends to starboard.',
  'swing.advice.magnet.red-port': 'C {C}: athwartship magnets below the card, red ends to port.',
  'swing.advice.spheres.place': 'Have the spheres in place before the heeling magnet is set.',
  'swing.advice.spheres.athwartships': 'D {D}: spheres athwartships; nearer or larger takes out more.',
  'swing.advice.spheres.fore-and-aft': 'D {D}: spheres fore and aft; nearer or larger takes out more.',
  'swing.advice.spheres.slew': 'E {E}: turn the pair of spheres {slew}, seen from above, from abeam.',
  'swing.advice.spheres.slew-fore-and-aft': 'E {E}: turn the pair of spheres {slew}, seen from above, from fore and aft.',
  'swing.advice.flinders.forward': 'Flinders bar forward of the compass.',
  'swing.advice.flinders.aft': 'Flinders bar abaft the compass.',
  'swing.advice.heeling.red-up': 'Heeling magnet with its red end up; to be set anew where the vertical force is another.',
  'swing.advice.heeling.red-down': 'Heeling magnet with its red end down; to be set anew where the vertical force is another.',
  'swing.advice.alignment.check': 'A {A} is cured by no magnet: check the lubber line, the azimuth circle, the variation used and the gyro.',
};
