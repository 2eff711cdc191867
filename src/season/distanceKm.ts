/** Great-circle distance between two places, km. Source: haversine on a sphere of 6,371 km. */
export const distanceKm = (latitude: number, longitude: number, otherLatitude: number, otherLongitude: number): number => {
  const radians = Math.PI / 180;
  const h = Math.sin(((otherLatitude - latitude) * radians) / 2) ** 2 +
    Math.cos(latitude * radians) * Math.cos(otherLatitude * radians) * Math.sin(((otherLongitude - longitude) * radians) / 2) ** 2;
  return 2 * 6371 * Math.asin(Math.min(1, Math.sqrt(h)));
};
