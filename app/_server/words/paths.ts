import type { PathsRefusal } from '@/lib/usecases/refusals/paths';
import type { Words } from './shape';

export const pathsWords: Words<PathsRefusal> = {
  'path-point-wrong': ({ line, example }) =>
    `Line ${line} is no point. Give how far east, a comma, and how far south of the site’s corner, such as ${example}.`,
  'path-too-far': ({ line }) =>
    `Line ${line} lies more than 10 km from the site’s corner. Give points within 10 km of it.`,
  'path-without-length': () => 'A path has a length. Give two points or more that lie apart.',
  'path-too-many-points': ({ most }) => `A path holds at most ${most} points. Draw it in two.`,
  'too-many-paths': ({ most }) => `A site holds at most ${most} paths. Retire one, or draw two as one line.`,
  'lorry-part-wrong': ({ example }) =>
    `Give how far along the path, such as ${example}, or leave it empty for the path’s own end.`,
  'lorry-part-backwards': () => 'The part ends before it begins. Measure both from where the path begins.',
  'lorry-part-beyond': ({ length }) => `The path is ${length} long. Give a place along it.`,
  'place-wrong': ({ example }) => `Give the distance from the site’s corner, such as ${example}.`,
  'place-too-far': () => 'Give a place within 10 km of the site’s corner.',
  'drop-point-name-taken': ({ name }) => `There is a drop point called ${name} already. Give another name.`,
  'drop-point-awaited': ({ delivery }) =>
    `A load is still to be tipped there: “${delivery}”. Choose another place for it first.`,
  'drop-point-gone': () => 'That drop point is no longer in use. Choose another.',
  'drop-point-elsewhere': () => 'That drop point lies on another site. Choose one of the site that the load goes to.',
};
