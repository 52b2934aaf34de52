/**
 * In CI the random cases are the same at every run, so that what lands is judged by its own
 * change; on a developer's machine they are new each time, and find what the same ones would not.
 */
import fc from 'fast-check';

if (process.env.CI) fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 20261126 });
