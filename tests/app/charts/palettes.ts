import type { Palette } from '../../../src/charts/model/palette.ts';

export const lightPalette: Palette = {
  paper: '#f7f2e8',
  ink: '#1e2b33',
  'ink-muted': '#5c6870',
  gridline: '#cfc6b5',
  border: '#8c8474',
  copper: '#a94a1f',
  'copper-tint': '#f0d9c6',
  water: '#1f6a9c',
  'water-tint': '#cfe1ec',
  oil: '#7a5e00',
  'oil-tint': '#e2b93b',
  plant: '#3f6a3a',
  steam: '#666e7c',
  alarm: '#9c1b5a',
};

export const darkPalette: Palette = {
  paper: '#14191c',
  ink: '#ede7da',
  'ink-muted': '#a7b0b5',
  gridline: '#334048',
  border: '#6b7981',
  copper: '#e8946a',
  'copper-tint': '#4a2d1e',
  water: '#74b6e3',
  'water-tint': '#1d3c50',
  oil: '#e3c14a',
  'oil-tint': '#a8871f',
  plant: '#93c487',
  steam: '#aeb6c2',
  alarm: '#f48bb8',
};
