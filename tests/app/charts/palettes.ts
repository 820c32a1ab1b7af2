import type { Palette } from '../../../src/charts/model/palette.ts';

export const lightPalette: Palette = {
  paper: '#f7f2e8',
  ink: '#1e2b33',
  'ink-2': '#5c6870',
  hair: '#cfc6b5',
  edge: '#8c8474',
  copper: '#a94a1f',
  'copper-wash': '#f0d9c6',
  water: '#1f6a9c',
  'water-wash': '#cfe1ec',
  oil: '#7a5e00',
  'oil-wash': '#e2b93b',
  plant: '#3f6a3a',
  steam: '#666e7c',
  alarm: '#9c1b5a',
};

export const darkPalette: Palette = {
  paper: '#14191c',
  ink: '#ede7da',
  'ink-2': '#a7b0b5',
  hair: '#334048',
  edge: '#6b7981',
  copper: '#e8946a',
  'copper-wash': '#4a2d1e',
  water: '#74b6e3',
  'water-wash': '#1d3c50',
  oil: '#e3c14a',
  'oil-wash': '#a8871f',
  plant: '#93c487',
  steam: '#aeb6c2',
  alarm: '#f48bb8',
};
