/** The lessons of the course, in order: what a manifest says of them. */
export const course = {
  id: 'compass-course',
  address: 'https://college.example/compass-course',
  title: 'The ship’s compass in three lessons',
  description: 'Earth’s field, the amplitude at sunrise, swinging ship: read, try, answer three exercises each.',
  /** 0 to 1; the drills of the pages have the same. */
  passMark: 0.66,
};

export const lessons = [
  {
    id: 'earths-field',
    title: 'Earth’s field and the variation',
    description: 'What a compass free of iron points to, and how to bring the chart’s variation up to date.',
  },
  {
    id: 'amplitude',
    title: 'The amplitude at sunrise',
    description: 'The error of the compass from one bearing of the Sun on the horizon.',
  },
  {
    id: 'swinging-ship',
    title: 'Swinging ship',
    description: 'From bearings on eight headings to a deviation card and its five coefficients.',
  },
];

/** The page of a lesson, from the root of a package. */
export const pageOf = ({ id }) => `demo/course/${id}.html`;
