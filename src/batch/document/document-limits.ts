/** The most a document may hold; more is refused in files and cut or refused while typing. */
export const longestText = 200;
export const longestName = 200;
export const mostBatches = 2000;
export const mostOwnFoods = 1000;
export const largestShare = 100;
export const longestNote = 500;
export const mostLogged = 5000;
export const mostCorrections = 5000;
export const mostDaysWaiting = 14;
/** The most a heat step may reach, in °C, as a pot of water does, and take, in minutes; both are above 0. */
export const hottestHeat = 100;
export const longestHeat = 1000;
/** How many things for the glass a batch keeps. */
export const mostExtras = 20;
/** Jars of grains, and what was done with each. */
export const mostStocks = 20;
export const mostStockLines = 1000;
export const mostCartons = 500;
export const mostPackages = 500;
export const mostClasses = 30;
export const mostKitchens = 100;
export const mostBlends = 200;
export const mostBlended = 6;
export const longestCurrency = 8;
/** Grams that no jar of grains comes near. */
export const heaviestStock = 100_000;
/** The key of a food among the packages: its kind before a name as long as any. */
export const longestFood = longestName + 20;
/** Digits of a price, its decimals among them. */
export const longestPrice = 40;
