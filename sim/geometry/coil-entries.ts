/** What the desk reference says of the geometry of a coil. */
import { correlation, type Argument, type Correlation } from '../correlation.ts';
import { coilBendRadius, coilFall, coilHeight, coilRise, coilTurns, tubeMass, turnLength } from './coil.ts';

const length: Argument = { unit: 'm', says: 'tube in the coil', range: [0.05, 100] };
const turn: Argument = { unit: 'm', says: 'diameter of a turn, centre to centre', range: [0.03, 2] };
const pitch: Argument = { unit: 'm', says: 'rise from one turn to the next', range: [0.004, 0.5] };
const outsideDiameter: Argument = { unit: 'm', says: 'outside diameter of the tube', range: [0.003, 0.1] };
const source = 'geometry of a helix';
const outside = 'exact; ranges are those of a scenario';

export const coilGeometryCorrelations: readonly Correlation[] = [
  correlation({
    name: 'coil-turn-length',
    says: 'Length of tube in one turn of a coil.',
    arguments: { D: turn, p: pitch },
    result: { symbol: 'l', unit: 'm' },
    tex: 'l = \\sqrt{(\\pi D)^2+p^2}',
    source,
    outside,
    compute: turnLength,
  }),
  correlation({
    name: 'coil-rise',
    says: 'Rise of a coil from the middle of its lowest turn to the middle of its uppermost.',
    arguments: { L: length, D: turn, p: pitch },
    result: { symbol: 'z', unit: 'm' },
    tex: 'z = \\frac{L\\,p}{\\sqrt{(\\pi D)^2+p^2}}',
    source,
    outside,
    compute: coilRise,
  }),
  correlation({
    name: 'coil-fall',
    says: 'Fall of the tube of a coil over its own length, the sine of its slope.',
    arguments: { D: turn, p: pitch },
    result: { symbol: '\\sin\\alpha', unit: '1' },
    tex: '\\sin\\alpha = \\frac{p}{\\sqrt{(\\pi D)^2+p^2}}',
    source,
    outside,
    compute: coilFall,
  }),
  correlation({
    name: 'coil-turns',
    says: 'Turns of a coil.',
    arguments: { L: length, D: turn, p: pitch },
    result: { symbol: 'N', unit: '1' },
    tex: 'N = \\frac{L}{\\sqrt{(\\pi D)^2+p^2}}',
    source,
    outside,
    compute: coilTurns,
  }),
  correlation({
    name: 'coil-height',
    says: 'Height of a coil from the underside of its lowest turn to the top of its uppermost.',
    arguments: { L: length, D: turn, p: pitch, D_o: outsideDiameter },
    result: { symbol: 'H', unit: 'm' },
    tex: 'H = \\frac{L\\,p}{\\sqrt{(\\pi D)^2+p^2}}+D_o',
    source,
    outside,
    compute: coilHeight,
  }),
  correlation({
    name: 'coil-bend-radius',
    says: 'Radius to which the tube of a coil is bent.',
    arguments: { D: turn, p: pitch },
    result: { symbol: 'R', unit: 'm' },
    tex: 'R = \\frac{D}{2}\\left[1+\\left(\\frac{p}{\\pi D}\\right)^2\\right]',
    source,
    outside,
    compute: coilBendRadius,
  }),
  correlation({
    name: 'tube-mass',
    says: 'Mass of a length of plain tube.',
    arguments: {
      D_i: { unit: 'm', says: 'bore of the tube', range: [0.002, 0.08] },
      D_o: outsideDiameter,
      L: length,
      rho: { unit: 'kg/m³', says: 'density of the tube material, copper 8940', range: [1000, 9000] },
    },
    result: { symbol: 'm', unit: 'kg' },
    tex: 'm = \\frac{\\pi}{4}\\left(D_o^2-D_i^2\\right)\\rho L',
    source: 'geometry of a hollow cylinder',
    outside,
    compute: tubeMass,
  }),
];
