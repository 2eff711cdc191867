import { shownFile } from './shownFile.js';

/** The file of an invented tree with its structure told, as the help shows it. */
export const shownStructure = shownFile('tree.yaml', `
tree:
  species: Scots pine
  trunk: { diameterMm: 40, heightMm: 400 }
  structure:   # azimuthDeg: 0 at the front, clockwise seen from above
    branches:
      - { id: low-left, heightMm: 90, azimuthDeg: 95, diameterMm: 12 }
      - { id: low-front, heightMm: 93, azimuthDeg: 5, diameterMm: 8 }
      - { id: low-right, heightMm: 96, azimuthDeg: 270, diameterMm: 9 }
      - { id: first-back, heightMm: 170, azimuthDeg: 180, diameterMm: 7 }`);
