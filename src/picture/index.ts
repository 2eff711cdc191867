export { type Wording, yearPicture } from './yearPicture.js';
