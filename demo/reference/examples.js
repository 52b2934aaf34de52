/** One example of every widget, from the invented ship: [attribute, value]. What stands inside the tag comes last, where there is any. */
const place = [['latitude', '48-17.0S'], ['longitude', '071-42.5W']];
const sunrise = ['instant', '2026-11-26T08:52:40Z'];
const cardInUse = ['card', '{"kind":"approximate","coefficients":{"A":0.4,"B":2.6,"C":-1.8,"D":1.5,"E":0.3}}'];
const table = ['000 0.5W', '045 1.5W', '090 2.5W', '135 1.0W', '180 1.0E', '225 2.0E', '270 2.5E', '315 1.0E'].join('\n');
const swung = ['000\t0.9W', '045\t2.6E', '090\t2.5E', '135\t2.3E', '180\t2.1E', '225\t1.4E', '270\t2.2W', '315\t4.3W'].join('\n');

export const examples = {
  'lubber-amplitude': [...place, sunrise, ['height-of-eye', '18'], ['bearing', '113.5'], ['heading', '040'], ['card-deviation', '1.4W']],
  'lubber-azimuth': [['body', 'Venus'], ...place, ['instant', '2026-11-26T08:20:00Z'], ['bearing', '083.4'], ['heading', '040'], ['card-deviation', '1.4W']],
  'lubber-transit': [...place, sunrise, ['charted', '157.0'], ['bearing', '148.5'], ['heading', '040']],
  'lubber-variation': [...place, ['date', '2026-11-26'], ['rose', '10°40′E 2023 (7′W)']],
  'lubber-field-map': [['date', '2026-11-26'], ...place, ['lines', 'variation']],
  'lubber-conversion': [['kind', 'bearing'], ['heading', '278.4'], ['bearing', '084'], ['variation', '9W'], ['deviation', '5E']],
  'lubber-swing': [['method', 'deviation'], ['headings', '8'], ...place, ['date', '2026-11-26'], ['rows', swung]],
  'lubber-deviation-curve': [cardInUse, ['heading', '090']],
  'lubber-deviation-card': [cardInUse, ['vessel', 'm.v. Halcyon Tern'], ['compass-name', 'Standard'], ['place', 'Port Averil roads'], ['date', '2026-10-26'], ['today', '2026-11-25']],
  'lubber-iron': [['state', 'c=0.08&P=2&slipHeading=180'], ['latitude', '43-30S'], ['longitude', '149-00E'], ['date', '2026-07-01']],
  'lubber-record': [['book', 'Halcyon Tern, reference page (demo)'], ['observer', 'E. M.'], ['now', '2026-11-26T09:00:00Z']],
  'lubber-drill': [['kind', 'amplitude card polarity'], ['level', '1'], ['count', '3'], ['seed', '4711']],
  'lubber-ship': [['name', 'm.v. Halcyon Tern'], ['compass-name', 'standard'], ...place, sunrise, ['height-of-eye', '18'], ['heading', '040'], ['table', table]],
};

export const inside = {
  'lubber-ship': [['lubber-amplitude', [['bearing', '113.5']]], ['lubber-conversion', []]],
};
