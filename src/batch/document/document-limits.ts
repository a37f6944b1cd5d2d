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
