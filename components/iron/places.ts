/** A port of the invented scenario; its position is typed as a user would type it. */
export interface ScenarioPlace {
  readonly name: string;
  readonly latitude: string;
  readonly longitude: string;
}

/** Invented ports, spread over the magnetic latitudes: steep dip in the south, none, and steep in the north. */
export const scenarioPlaces: readonly ScenarioPlace[] = [
  { name: 'Cape Orrin', latitude: '43-30S', longitude: '149-00E' },
  { name: 'Vessel Point', latitude: '34-40S', longitude: '018-20E' },
  { name: 'Tamber Roads', latitude: '06-10N', longitude: '079-30E' },
  { name: 'Quill Harbour', latitude: '28-15N', longitude: '015-40W' },
  { name: 'Skerrivane', latitude: '60-30N', longitude: '003-00E' },
  { name: 'Ullin Sound', latitude: '69-40N', longitude: '092-00W' },
];
