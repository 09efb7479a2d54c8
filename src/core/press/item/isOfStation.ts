/** Whether an item is one of a station's limits, by its name: `Punch throat` of `Punch`. Not the station itself. */
export function isOfStation(itemName: string, stationName: string): boolean {
  return itemName.startsWith(`${stationName} `);
}
