import { add, convert, type Quantity, quantity } from '../../src/measure/convert';

const sugar = quantity(100, 'g');
const milk = quantity(1, 'L');
const room = quantity(21, '°C');
const rise = quantity(2, 'Δ°C');

// What must compile.
export const heavier: Quantity<'mass'> = add(sugar, quantity(1, 'oz'));
export const warmer: Quantity<'temperature'> = add(room, rise);
export const bothRises: Quantity<'temperatureDifference'> = add(rise, rise);
export const cups = convert(1, 'L', 'cup');

// @ts-expect-error a mass and a volume are not added
add(sugar, milk);
// @ts-expect-error nor a volume and a mass
add(milk, sugar);
// @ts-expect-error two temperatures are not added
add(room, room);
// @ts-expect-error a difference is not raised by a temperature
add(rise, room);
// @ts-expect-error two acidities are not added
add(quantity(4.5, 'pH'), quantity(4.5, 'pH'));
// @ts-expect-error a quantity does not change its kind
export const wrong: Quantity<'mass'> = milk;
// @ts-expect-error a mass is not said in millilitres
convert(1, 'g', 'mL');
// @ts-expect-error a temperature is not a difference of temperature
convert(1, '°C', 'Δ°F');
// @ts-expect-error a unit that is not in the table
quantity(1, 'stone');
