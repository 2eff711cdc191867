import type { Message } from '../contract/types.generated.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import type { Climate } from '../season/climate.js';
import { message } from './message.js';

/** What the season stands on: a station and how far it is, told normals or frost dates, or latitude alone. */
export const whereText = (climate: Climate, knowledge: Knowledge): Message => {
  const days = Math.round(climate.plusMinusDays);
  switch (climate.quality) {
    case 'station': {
      const { name = '', km = 0 } = climate.station ?? {};
      return km === 0 ? message(knowledge, 'where.station-itself', { name, days }) : message(knowledge, 'where.station', { name, km, days });
    }
    case 'normals':
    case 'frost-dates':
      return message(knowledge, `where.${climate.quality}`, { days });
    case 'latitude':
    case 'none':
      return message(knowledge, `where.${climate.quality}`);
  }
};
