import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { newPage, openBrowser } from './browser.js';
import { unpackCourse } from './unpacked-course.js';
import type { PackageKind, UnpackedCourse } from './unpacked-course.js';

/** An element as plain data; names without their prefix, attributes with. */
interface Node {
  readonly name: string;
  readonly namespace: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly children: readonly Node[];
}

/** Reads a document with the browser's own reader, so that it is well-formed is part of the test. */
async function readXml(page: Page, text: string): Promise<Node> {
  // Flat, each with the place of its parent: a function that calls itself does not survive the way into the page.
  const flat = await page.evaluate((source) => {
    const parsed = new DOMParser().parseFromString(source, 'application/xml');
    if (parsed.querySelector('parsererror')) throw new Error(parsed.documentElement.textContent ?? 'not well-formed');
    const elements = [...parsed.querySelectorAll('*')];
    return elements.map((element) => ({
      name: element.localName,
      namespace: element.namespaceURI ?? '',
      attributes: Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value])) as Record<string, string>,
      text: (element.textContent ?? '').trim(),
      parent: element.parentElement ? elements.indexOf(element.parentElement) : -1,
    }));
  }, text);
  const build = (place: number): Node => {
    const { name, namespace, attributes, text: inside } = flat[place] as (typeof flat)[number];
    const children = flat.flatMap(({ parent }, index) => (parent === place ? [build(index)] : []));
    return { name, namespace, attributes, text: inside, children };
  };
  return build(0);
}

const child = (node: Node, name: string): Node => {
  const found = node.children.filter((each) => each.name === name);
  assert.equal(found.length, 1, `one ${name} in ${node.name}`);
  return found[0] as Node;
};

const all = (node: Node, name: string): readonly Node[] => node.children.flatMap((each) => [...(each.name === name ? [each] : []), ...all(each, name)]);

/** xs:ID: a letter or underscore first, no blank, no colon. */
const identifier = /^[A-Za-z_][\w.-]*$/;

/** Each kind's namespaces and words: SCORM 1.2 CAM 2.2.4 and 2004 4th edition CAM 3.4 (section numbers from memory). */
const scorm = {
  'scorm-1.2': {
    namespaces: { imscp: 'http://www.imsproject.org/xsd/imscp_rootv1p1p2', adlcp: 'http://www.adlnet.org/xsd/adlcp_rootv1p2' },
    version: '1.2',
    type: 'adlcp:scormtype',
  },
  'scorm-2004': {
    namespaces: { imscp: 'http://www.imsglobal.org/xsd/imscp_v1p1', adlcp: 'http://www.adlnet.org/xsd/adlcp_v1p3' },
    version: '2004 4th Edition',
    type: 'adlcp:scormType',
  },
} as const;

describe('the tables of contents of the packages', () => {
  let browser: Browser;
  let page: Page;
  let course: UnpackedCourse;

  before(async () => {
    course = unpackCourse();
    browser = await openBrowser();
    page = await newPage(browser);
  });

  after(async () => {
    await browser.close();
    course.remove();
  });

  const contents = (kind: PackageKind, name: string): Promise<Node> => readXml(page, readFileSync(join(course.folder(kind), name), 'utf8'));

  for (const kind of ['scorm-1.2', 'scorm-2004'] as const) {
    const { namespaces, version, type } = scorm[kind];

    it(`${kind}: imsmanifest.xml at the root, of the edition's namespaces, schema and version`, async () => {
      const manifest = await contents(kind, 'imsmanifest.xml');
      assert.equal(manifest.name, 'manifest');
      assert.equal(manifest.namespace, namespaces.imscp);
      assert.equal(manifest.attributes['xmlns:adlcp'], namespaces.adlcp);
      assert.match(manifest.attributes['identifier'] ?? '', identifier);
      // The order of the schema: metadata, organizations, resources.
      assert.deepEqual(manifest.children.map(({ name }) => name), ['metadata', 'organizations', 'resources']);
      assert.deepEqual(child(manifest, 'metadata').children.map(({ name, text }) => [name, text]), [
        ['schema', 'ADL SCORM'],
        ['schemaversion', version],
      ]);
    });

    it(`${kind}: one organization, the default, with three lessons, each an item of a SCO`, async () => {
      const manifest = await contents(kind, 'imsmanifest.xml');
      const organizations = child(manifest, 'organizations');
      const organization = child(organizations, 'organization');
      assert.equal(organizations.attributes['default'], organization.attributes['identifier']);
      // A title is the first part of organization and item.
      assert.equal(organization.children[0]?.name, 'title');
      const items = organization.children.filter(({ name }) => name === 'item');
      assert.equal(items.length, 3);
      const resources = all(manifest, 'resource');
      for (const item of items) {
        assert.equal(item.children[0]?.name, 'title');
        assert.notEqual(item.children[0]?.text, '');
        const resource = resources.find(({ attributes }) => attributes['identifier'] === item.attributes['identifierref']);
        assert.equal(resource?.attributes[type], 'sco');
        assert.equal(resource?.attributes['type'], 'webcontent');
        // The page to launch is a file of its own resource.
        assert.ok(resource?.children.some(({ name, attributes }) => name === 'file' && attributes['href'] === resource.attributes['href']));
      }
    });

    it(`${kind}: identifiers unlike, dependencies met, and every file of the package listed once`, async () => {
      const manifest = await contents(kind, 'imsmanifest.xml');
      const identified = ['organization', 'item', 'resource'].flatMap((name) => all(manifest, name)).map(({ attributes }) => attributes['identifier'] ?? '');
      for (const each of identified) assert.match(each, identifier);
      assert.equal(new Set(identified).size, identified.length);
      for (const { attributes } of all(manifest, 'dependency')) assert.ok(identified.includes(attributes['identifierref'] ?? ''));
      const listed = all(manifest, 'file').map(({ attributes }) => attributes['href'] ?? '');
      assert.deepEqual([...listed].sort(), course.names(kind).filter((name) => name !== 'imsmanifest.xml').sort());
    });
  }

  it('scorm-1.2: no mastery score, by which a platform would judge a lesson left in the middle', async () => {
    assert.deepEqual(all(await contents('scorm-1.2', 'imsmanifest.xml'), 'masteryscore'), []);
  });

  // Sequencing and Navigation 3.10: satisfied by measure, 0.66; 3.13: the lesson itself reports both.
  it('scorm-2004: each lesson passes by its score at the mark of its page, and the lesson is asked for both statuses', async () => {
    const items = all(await contents('scorm-2004', 'imsmanifest.xml'), 'item');
    for (const item of items) {
      const sequencing = child(item, 'sequencing');
      assert.equal(sequencing.namespace, 'http://www.imsglobal.org/xsd/imsss');
      // The schema's order: objectives before deliveryControls.
      assert.deepEqual(sequencing.children.map(({ name }) => name), ['objectives', 'deliveryControls']);
      const [objective] = all(sequencing, 'primaryObjective');
      assert.equal(objective?.attributes['satisfiedByMeasure'], 'true');
      const mark = child(objective as Node, 'minNormalizedMeasure').text;
      const name = (item.attributes['identifierref'] ?? '').replace('resource-', '');
      const html = readFileSync(join(course.folder('scorm-2004'), `demo/course/${name}.html`), 'utf8');
      assert.equal(/pass-mark="([\d.]+)"/.exec(html)?.[1], mark);
      assert.deepEqual(child(sequencing, 'deliveryControls').attributes, { completionSetByContent: 'true', objectiveSetByContent: 'true' });
    }
  });

  it('cmi5: cmi5.xml at the root, with a course and three assignable units by the course structure', async () => {
    const structure = await contents('cmi5', 'cmi5.xml');
    // cmi5 13.1: namespace and order of the schema.
    assert.equal(structure.namespace, 'https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd');
    assert.deepEqual(structure.children.map(({ name }) => name), ['course', 'au', 'au', 'au']);
    const ids = structure.children.map(({ attributes }) => attributes['id'] ?? '');
    // 13.1.1, 13.1.4: ids are IRIs, unlike.
    for (const id of ids) assert.equal(new URL(id).hostname, 'college.example');
    assert.equal(new Set(ids).size, 4);
    for (const unit of structure.children.slice(1)) {
      assert.deepEqual(unit.children.map(({ name }) => name), ['title', 'description', 'url']);
      for (const { attributes, text } of all(unit, 'langstring')) {
        assert.equal(attributes['lang'], 'en');
        assert.notEqual(text, '');
      }
      // 13.1.4: words of the lists, a mark from 0 to 1, a relative address of the package (14.1).
      assert.ok(['OwnWindow', 'AnyWindow'].includes(unit.attributes['launchMethod'] ?? ''));
      assert.ok(['Passed', 'Completed', 'CompletedAndPassed', 'CompletedOrPassed', 'NotApplicable'].includes(unit.attributes['moveOn'] ?? ''));
      const mark = Number(unit.attributes['masteryScore']);
      assert.ok(mark > 0 && mark <= 1);
      assert.ok(course.names('cmi5').includes(child(unit, 'url').text));
    }
  });

  for (const kind of ['scorm-1.2', 'scorm-2004', 'cmi5'] as const) {
    it(`${kind}: the licence goes with the scripts`, () => {
      for (const name of ['LICENSE', 'dist/third-party-notices.txt']) assert.ok(course.names(kind).includes(name), name);
    });

    it(`${kind}: whatever its pages ask for is inside`, () => {
      for (const name of course.names(kind).filter((each) => each.endsWith('.html'))) {
        const html = readFileSync(join(course.folder(kind), name), 'utf8');
        const asked = [...html.matchAll(/(?:src|href)="([^"#]+)"/g)].map(([, address]) => new URL(address ?? '', `https://package.example/${name}`));
        for (const { hostname, pathname } of asked) {
          assert.equal(hostname, 'package.example');
          assert.ok(course.names(kind).includes(pathname.slice(1)), `${name} asks for ${pathname}`);
        }
      }
    });
  }
});
