/** What each kind of platform reads first: the table of contents of a package. */
import { course, lessons, pageOf } from './lessons.js';
import { sharedFiles } from './package-files.js';

const escapes = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const xml = (text) => text.replace(/[&<>"]/g, (letter) => escapes[letter]);
const lines = (texts) => texts.join('\n');

/** The resources are the same in both editions of SCORM but for the case of one attribute. */
function resources(scormType) {
  const files = sharedFiles.map((path) => `      <file href="${path}"/>`);
  return lines([
    ...lessons.map(
      (lesson) => `    <resource identifier="resource-${lesson.id}" type="webcontent" ${scormType}="sco" href="${pageOf(lesson)}">
      <file href="${pageOf(lesson)}"/>
      <dependency identifierref="resource-shared"/>
    </resource>`,
    ),
    `    <resource identifier="resource-shared" type="webcontent" ${scormType}="asset">`,
    ...files,
    '    </resource>',
  ]);
}

/** SCORM 1.2 Content Aggregation Model 2.3. No mastery score: a platform that has one judges unfinished lessons, too. */
export function scorm12Manifest() {
  return `<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="${course.id}" version="1.0" xmlns="http://www.imsproject.org/xsd/imscp_rootv1p1p2" xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_rootv1p2">
  <metadata>
    <schema>ADL SCORM</schema>
    <schemaversion>1.2</schemaversion>
  </metadata>
  <organizations default="organization">
    <organization identifier="organization">
      <title>${xml(course.title)}</title>
${lines(
  lessons.map(
    ({ id, title }) => `      <item identifier="item-${id}" identifierref="resource-${id}" isvisible="true">
        <title>${xml(title)}</title>
      </item>`,
  ),
)}
    </organization>
  </organizations>
  <resources>
${resources('adlcp:scormtype')}
  </resources>
</manifest>
`;
}

/** SCORM 2004 4th edition, Content Aggregation Model 3.4; any lesson may be chosen, each passes by its score. */
export function scorm2004Manifest() {
  return `<?xml version="1.0" encoding="UTF-8"?>
<manifest identifier="${course.id}" version="1.0" xmlns="http://www.imsglobal.org/xsd/imscp_v1p1" xmlns:adlcp="http://www.adlnet.org/xsd/adlcp_v1p3" xmlns:imsss="http://www.imsglobal.org/xsd/imsss">
  <metadata>
    <schema>ADL SCORM</schema>
    <schemaversion>2004 4th Edition</schemaversion>
  </metadata>
  <organizations default="organization">
    <organization identifier="organization">
      <title>${xml(course.title)}</title>
${lines(
  lessons.map(
    ({ id, title }) => `      <item identifier="item-${id}" identifierref="resource-${id}" isvisible="true">
        <title>${xml(title)}</title>
        <imsss:sequencing>
          <imsss:objectives>
            <imsss:primaryObjective objectiveID="objective-${id}" satisfiedByMeasure="true">
              <imsss:minNormalizedMeasure>${course.passMark}</imsss:minNormalizedMeasure>
            </imsss:primaryObjective>
          </imsss:objectives>
          <imsss:deliveryControls completionSetByContent="true" objectiveSetByContent="true"/>
        </imsss:sequencing>
      </item>`,
  ),
)}
      <imsss:sequencing>
        <imsss:controlMode choice="true" flow="true"/>
      </imsss:sequencing>
    </organization>
  </organizations>
  <resources>
${resources('adlcp:scormType')}
  </resources>
</manifest>
`;
}

const words = (name, text) => `<${name}><langstring lang="en">${xml(text)}</langstring></${name}>`;

/** cmi5 13: the course structure. Addresses are names, nothing is asked of them. */
export function cmi5Structure() {
  return `<?xml version="1.0" encoding="UTF-8"?>
<courseStructure xmlns="https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd">
  <course id="${course.address}">
    ${words('title', course.title)}
    ${words('description', course.description)}
  </course>
${lines(
  lessons.map(
    (lesson) => `  <au id="${course.address}/${lesson.id}" launchMethod="AnyWindow" moveOn="CompletedAndPassed" masteryScore="${course.passMark}">
    ${words('title', lesson.title)}
    ${words('description', lesson.description)}
    <url>${pageOf(lesson)}</url>
  </au>`,
  ),
)}
</courseStructure>
`;
}
