export interface Work {
  /** As printed; within square brackets what it is about, where the title was not on what was seen. */
  readonly title: string;
  /** Null where it is an institution's, or no name was on what was seen. */
  readonly authors: string | null;
  /** Volume and pages included; null for what is no article. */
  readonly journal: string | null;
  readonly year: string;
  readonly publisher?: string;
  /** What was really looked at: the full page, an abstract only, or a copy. */
  readonly seen: string;
}

const table = {
  'usda-sr': {
    title:
      'USDA National Nutrient Database for Standard Reference, Releases 24 (2011), 26 (2013), 28 (September 2015) and Legacy (April 2018)',
    authors: null,
    journal: null,
    year: '2011–2018',
    publisher: 'US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory',
    seen: 'copies of the data; names and measures from Release 28, proximates and total sugars from Legacy, individual sugars and starch from Release 26',
  },
  'nist-sp811': {
    title: 'NIST Special Publication 811, Guide for the Use of the International System of Units (SI)',
    authors: 'Thompson A., Taylor B.N.',
    journal: null,
    year: '2008',
    publisher: 'National Institute of Standards and Technology',
    seen: 'not opened; its values in an independent table of units drawn from it',
  },
  'codata-2018': {
    title: 'CODATA recommended values of the fundamental physical constants: 2018',
    authors: null,
    journal: null,
    year: '2018',
    publisher: 'Committee on Data of the International Science Council',
    seen: 'not opened; its values in an independent table of units drawn from it',
  },
  'choi-okos-1986': {
    title: 'Effects of temperature and composition on the thermal properties of foods',
    authors: 'Choi Y., Okos M.R.',
    journal: 'Food Engineering and Process Applications 1: 93–101',
    year: '1986',
    publisher: 'Elsevier',
    seen: 'coefficients as reproduced in a textbook and in independent copies that agree; ash in the copies only',
  },
  'sugar-manual-1995': {
    title: 'Sugar Technologists Manual',
    authors: 'Bubník Z., Kadlec P., Urban D., Bruhns M.',
    journal: null,
    year: '1995',
    seen: 'the coefficients of page 164 in two copies, which differ by 0.0003 in one of them',
  },
  'carroll-1991': {
    title: 'The solubility of carbon dioxide in water at low pressure',
    authors: 'Carroll J.J., Slupsky J.D., Mather A.E.',
    journal: 'J. Phys. Chem. Ref. Data 20: 1201–1209',
    year: '1991',
    publisher: 'AIP',
    seen: 'abstract only',
  },
  'rosso-1995': {
    title: 'Convenient model to describe the combined effects of temperature and pH on microbial growth',
    authors: 'Rosso L., Lobry J.R., Bajard S., Flandrois J.P.',
    journal: 'Appl. Environ. Microbiol. 61: 610–616',
    year: '1995',
    publisher: 'American Society for Microbiology',
    seen: 'abstract only, and the equation itself in the manual of a growth package; the title is from memory',
  },
  'saccharomyces-2011': {
    title: 'Temperature adaptation markedly determines evolution within the genus Saccharomyces',
    authors: 'Salvadó Z. and others',
    journal: 'Appl. Environ. Microbiol. 77: 2292–2302',
    year: '2011',
    publisher: 'American Society for Microbiology',
    seen: 'abstract only; the title is from memory',
  },
  'dairy-starter-2019': {
    title: '[A dairy starter of three bacterial species in milk]',
    authors: 'Medveďová A., Šipošová P., Mančušková T., Valík Ľ.',
    journal: 'Fermentation 5(1): 2',
    year: '2019',
    publisher: 'MDPI',
    seen: 'abstract only',
  },
  'plantarum-2019': {
    title: '[Growth of Lactiplantibacillus plantarum in milk and broth]',
    authors: 'Matejčeková Z. and others',
    journal: 'J. Food Nutr. Res. 58(2): 125–134',
    year: '2019',
    seen: 'abstract only',
  },
  'kefir-ethanol': {
    title:
      '[Modelling of batch kefir fermentation kinetics for ethanol], and Influence of temperature variations on ethanol production by kefir grains',
    authors: 'Zajšek K., Goršek A.',
    journal: 'Biochem. Eng. J. (the first)',
    year: '2010',
    seen: 'abstracts only',
  },
  'water-kefir-2014': {
    title: 'Microbial species diversity, community dynamics, and metabolite kinetics of water kefir fermentation',
    authors: 'Laureys D., De Vuyst L.',
    journal: 'Appl. Environ. Microbiol. 80: 2564',
    year: '2014',
    publisher: 'American Society for Microbiology',
    seen: 'abstract only; the title is from memory',
  },
  'water-kefir-sugars-2021': {
    title: '[Inoculum, sugars and growth of water kefir grains]',
    authors: 'Laureys D. and others',
    journal: 'Front. Microbiol. 12: 628599',
    year: '2021',
    publisher: 'Frontiers',
    seen: 'abstract only',
  },
  'codex-243': {
    title: 'Codex Standard for Fermented Milks, CXS 243-2003, § 2.1',
    authors: null,
    journal: null,
    year: '2003',
    publisher: 'Codex Alimentarius Commission',
    seen: 'text of the section',
  },
  'almond-soak-2020': {
    title: 'Growth and survival of foodborne pathogens during soaking and drying of almond kernels',
    authors: null,
    journal: 'J. Food Prot. 83: 2122–2133',
    year: '2020',
    publisher: 'International Association for Food Protection',
    seen: 'abstract and the authors’ summary; their names were not noted',
  },
  'almond-pulp-2022': {
    title: '[Almond okara in biscuits]',
    authors: null,
    journal: 'J. Sci. Food Agric., doi 10.1002/jsfa.12286',
    year: '2022',
    publisher: 'Wiley',
    seen: 'abstract only; the authors’ names were not noted',
  },
  'walnut-soak': {
    title: 'Fate of foodborne pathogens during soaking and drying of walnuts',
    authors: null,
    journal: null,
    year: 'not recorded',
    publisher: 'Michigan State University (record)',
    seen: 'abstract only; the authors’ names were not noted',
  },
  'cashew-ferment-2024': {
    title: '[Salmonella in fermenting soaked cashews]',
    authors: 'Louvau H.S., Wang H., Shaposhnikov M.M., Harris L.J.',
    journal: 'J. Food Prot. 87(8): 100311',
    year: '2024',
    publisher: 'International Association for Food Protection',
    seen: 'abstract only',
  },
  'plant-drink-pathogens': {
    title: '[Listeria and Salmonella in plant-based drinks, two articles]',
    authors: 'Bartula K. and others',
    journal: 'Food Microbiol. 109: 104143 (2023) and 121: 104530 (2024)',
    year: '2023–2024',
    publisher: 'Elsevier',
    seen: 'abstracts only',
  },
  'coconut-extraction': {
    title: '[Extraction of coconut milk]',
    authors: null,
    journal: 'Journal of Agriculture of the University of Puerto Rico',
    year: 'not recorded',
    publisher: 'University of Puerto Rico',
    seen: 'abstract only; the authors’ names were not noted',
  },
  'flax-mucilage-1994': {
    title: '[Mucilage of flax seed]',
    authors: 'Fedeniuk R.W., Biliaderis C.G.',
    journal: 'J. Agric. Food Chem. 42: 240–247',
    year: '1994',
    publisher: 'American Chemical Society',
    seen: 'abstract only',
  },
  'cfr-21-114': {
    title: '21 CFR 114.3, acidified foods, definitions',
    authors: null,
    journal: null,
    year: 'in force',
    publisher: 'US Food and Drug Administration',
    seen: 'full text, in two copies',
  },
  'fsis-danger-zone': {
    title: 'Danger Zone (40 °F – 140 °F)',
    authors: null,
    journal: null,
    year: '2016',
    publisher: 'USDA Food Safety and Inspection Service',
    seen: 'sentences in copies',
  },
  'food-code': {
    title: 'FDA Food Code, § 3-501.16, as adopted by two states',
    authors: null,
    journal: null,
    year: '2009 and 2014',
    publisher: 'US Food and Drug Administration',
    seen: 'the states’ texts',
  },
  'infant-honey': {
    title: 'Honey: never for babies under age 1, and a state infant botulism programme page',
    authors: null,
    journal: null,
    year: 'not recorded',
    publisher: 'Institut national de santé publique du Québec; California Department of Public Health',
    seen: 'full pages',
  },
  'higher-risk': {
    title: 'People at Risk of Foodborne Illness, and a university extension page on special precautions',
    authors: null,
    journal: null,
    year: 'not recorded',
    publisher: 'US Food and Drug Administration; Washington State University Extension',
    seen: 'full pages',
  },
  'fda-allergens': {
    title: 'The FASTER Act, page on the major food allergens',
    authors: null,
    journal: null,
    year: 'not recorded',
    publisher: 'US Food and Drug Administration',
    seen: 'full page',
  },
  'fda-tree-nuts-2025': {
    title: 'Questions and Answers Regarding Food Allergens (Edition 5)',
    authors: null,
    journal: null,
    year: '2025',
    publisher: 'US Food and Drug Administration',
    seen: 'FDA’s page of frequent questions (coconut no longer listed); the list of 12 through university, state and law pages that agree; the guidance itself not opened',
  },
  'eu-1169-2011': {
    title: 'Regulation (EU) No 1169/2011, Annex II, substances or products causing allergies or intolerances',
    authors: null,
    journal: null,
    year: '2011',
    publisher: 'European Union',
    seen: 'English text in a copy',
  },
  'ttb-kombucha': {
    title: 'Kombucha, information pages',
    authors: null,
    journal: null,
    year: 'not recorded',
    publisher: 'US Alcohol and Tobacco Tax and Trade Bureau',
    seen: 'full pages',
  },
  'flax-cyanide': {
    title: 'Cyanide in ground flax seed: EFSA 2019, through reports of it, and the Austrian agency’s page of 2022',
    authors: null,
    journal: null,
    year: '2019–2022',
    publisher: 'European Food Safety Authority; Austrian Agency for Health and Food Safety',
    seen: 'reports of the first; full page of the second',
  },
} as const satisfies Record<string, Work>;

export type WorkId = keyof typeof table;

/** Every work that a value, fact or formula here is taken from. */
export const works: Readonly<Record<WorkId, Work>> = table;
