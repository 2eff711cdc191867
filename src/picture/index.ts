export { treePicture } from './treePicture.js';
export { type Wording, yearPicture } from './yearPicture.js';
