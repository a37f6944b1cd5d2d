export interface Work {
  readonly title: string;
  readonly year: string;
  readonly publisher?: string;
  /** What was really looked at: the full page, an abstract only, or a copy. */
  readonly seen: string;
}

const table = {
  'usda-sr': {
    title:
      'USDA National Nutrient Database for Standard Reference, Releases 24 (2011), 26 (2013), 28 (September 2015) and Legacy (April 2018)',
    year: '2011–2018',
    publisher: 'US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory',
    seen: 'copies of the data; names and measures from Release 28, proximates and total sugars from Legacy, individual sugars and starch from Release 26',
  },
  'nist-hb44': {
    title: 'NIST Handbook 44, Appendix C, General Tables of Units of Measurement',
    year: 'edition not recorded',
    publisher: 'National Institute of Standards and Technology',
    seen: 'archived page and an extract',
  },
  'nist-kitchen': {
    title: 'Metric Household (SP 430 table) and Cooking Measurement Equivalencies',
    year: 'edition not recorded',
    publisher: 'NIST Office of Weights and Measures',
    seen: 'full pages',
  },
  'cfr-21-101-9': {
    title: '21 CFR 101.9(b)(5)(viii), nutrition labelling of food',
    year: 'in force',
    publisher: 'US Food and Drug Administration',
    seen: 'the sentence, quoted in another work',
  },
  'choi-okos-1986': {
    title:
      'Effects of temperature and composition on the thermal properties of foods, in Food Engineering and Process Applications 1: 93–101',
    year: '1986',
    publisher: 'Elsevier',
    seen: 'coefficients as reproduced in a textbook and in independent copies that agree; ash in the copies only',
  },
  'carroll-1991': {
    title: 'The solubility of carbon dioxide in water at low pressure, J. Phys. Chem. Ref. Data 20: 1201–1209',
    year: '1991',
    publisher: 'AIP',
    seen: 'abstract only',
  },
  'rosso-1995': {
    title: 'Article on growth rate against temperature and pH, Appl. Environ. Microbiol. 61: 610–616',
    year: '1995',
    publisher: 'American Society for Microbiology',
    seen: 'abstract only; the equation itself in the manual of a growth package',
  },
  'saccharomyces-2011': {
    title: 'Article on the growth temperatures of the genus Saccharomyces, Appl. Environ. Microbiol. 77: 2292–2302',
    year: '2011',
    publisher: 'American Society for Microbiology',
    seen: 'abstract only',
  },
  'dairy-starter-2019': {
    title: 'Article on a dairy starter of three bacterial species in milk, Fermentation 5(1): 2',
    year: '2019',
    publisher: 'MDPI',
    seen: 'abstract only',
  },
  'plantarum-2019': {
    title: 'Article on growth of Lactiplantibacillus plantarum in milk and broth, J. Food Nutr. Res. 58(2): 125–134',
    year: '2019',
    publisher: 'Journal of Food and Nutrition Research',
    seen: 'abstract only',
  },
  'kefir-ethanol': {
    title: 'Influence of temperature variations on ethanol production by kefir grains, and a companion paper',
    year: '2010',
    publisher: 'Biochemical Engineering Journal (the companion)',
    seen: 'abstracts only',
  },
  'water-kefir-2014': {
    title: 'Article on the microbes and products of a water kefir fermentation, Appl. Environ. Microbiol. 80: 2564',
    year: '2014',
    publisher: 'American Society for Microbiology',
    seen: 'abstract only',
  },
  'water-kefir-sugars-2021': {
    title: 'Article on inoculum, sugars and growth of water kefir grains, Front. Microbiol. 12: 628599',
    year: '2021',
    publisher: 'Frontiers',
    seen: 'abstract only',
  },
  'water-kefir-temperature-2022': {
    title: 'Article on temperature and backslopping of water kefir, Front. Microbiol. 13: 871550',
    year: '2022',
    publisher: 'Frontiers',
    seen: 'abstract only',
  },
  'grain-growth-2017': {
    title: 'Kefir grain biomass production, J. Food Process Eng. 40',
    year: '2017',
    publisher: 'Wiley',
    seen: 'abstract only',
  },
  'codex-243': {
    title: 'Codex Standard for Fermented Milks, CXS 243-2003, § 2.1',
    year: '2003',
    publisher: 'Codex Alimentarius Commission',
    seen: 'text of the section',
  },
  'almond-soak-2020': {
    title:
      'Growth and survival of foodborne pathogens during soaking and drying of almond kernels, J. Food Prot. 83: 2122–2133',
    year: '2020',
    publisher: 'International Association for Food Protection',
    seen: 'abstract and the authors’ summary',
  },
  'walnut-soak': {
    title: 'Fate of foodborne pathogens during soaking and drying of walnuts',
    year: 'not recorded',
    publisher: 'Michigan State University (record)',
    seen: 'abstract only',
  },
  'cashew-ferment-2024': {
    title: 'Article on Salmonella in fermenting soaked cashews, J. Food Prot. 87(8): 100311',
    year: '2024',
    publisher: 'International Association for Food Protection',
    seen: 'abstract only',
  },
  'plant-drink-pathogens': {
    title:
      'Articles on Listeria and Salmonella in plant-based drinks, Food Microbiol. 109: 104143 (2023) and 121: 104530 (2024)',
    year: '2023–2024',
    publisher: 'Elsevier',
    seen: 'abstracts only',
  },
  'peanut-hydration-2022': {
    title: 'Moisture-dependent physical properties and hydration kinetics of peanut kernel',
    year: '2022',
    seen: 'abstract only',
  },
  'coconut-extraction': {
    title: 'Article on the extraction of coconut milk, Journal of Agriculture of the University of Puerto Rico',
    year: 'not recorded',
    publisher: 'University of Puerto Rico',
    seen: 'abstract only',
  },
  'flax-mucilage-1994': {
    title: 'Article on flax seed mucilage, J. Agric. Food Chem. 42: 240–247',
    year: '1994',
    publisher: 'American Chemical Society',
    seen: 'abstract only',
  },
  'cfr-21-114': {
    title: '21 CFR 114.3, acidified foods, definitions',
    year: 'in force',
    publisher: 'US Food and Drug Administration',
    seen: 'full text, in two copies',
  },
  'fsis-danger-zone': {
    title: 'Danger Zone (40 °F – 140 °F)',
    year: '2016',
    publisher: 'USDA Food Safety and Inspection Service',
    seen: 'sentences in copies',
  },
  'food-code': {
    title: 'FDA Food Code, § 3-501.16, as adopted by two states',
    year: '2009 and 2014',
    publisher: 'US Food and Drug Administration',
    seen: 'the states’ texts',
  },
  'infant-honey': {
    title: 'Honey: never for babies under age 1, and a state infant botulism programme page',
    year: 'not recorded',
    publisher: 'Institut national de santé publique du Québec; California Department of Public Health',
    seen: 'full pages',
  },
  'higher-risk': {
    title: 'People at Risk of Foodborne Illness, and a university extension page on special precautions',
    year: 'not recorded',
    publisher: 'US Food and Drug Administration; Washington State University Extension',
    seen: 'full pages',
  },
  'fda-allergens': {
    title: 'The FASTER Act, page on the major food allergens',
    year: 'not recorded',
    publisher: 'US Food and Drug Administration',
    seen: 'full page',
  },
  'fda-tree-nuts-2025': {
    title: 'Questions and Answers Regarding Food Allergens (Edition 5)',
    year: '2025',
    publisher: 'US Food and Drug Administration',
    seen: 'FDA’s page of frequent questions (coconut no longer listed); the list of 12 through university, state and law pages that agree; the guidance itself not opened',
  },
  'eu-1169-2011': {
    title: 'Regulation (EU) No 1169/2011, Annex II, substances or products causing allergies or intolerances',
    year: '2011',
    publisher: 'European Union',
    seen: 'English text in a copy',
  },
  'ttb-kombucha': {
    title: 'Kombucha, information pages',
    year: 'not recorded',
    publisher: 'US Alcohol and Tobacco Tax and Trade Bureau',
    seen: 'full pages',
  },
  'flax-cyanide': {
    title: 'Cyanide in ground flax seed: EFSA 2019, through reports of it, and the Austrian agency’s page of 2022',
    year: '2019–2022',
    publisher: 'European Food Safety Authority; Austrian Agency for Health and Food Safety',
    seen: 'reports of the first; full page of the second',
  },
} as const satisfies Record<string, Work>;

export type WorkId = keyof typeof table;

/** Every work that a value, fact or formula here is taken from. */
export const works: Readonly<Record<WorkId, Work>> = table;
