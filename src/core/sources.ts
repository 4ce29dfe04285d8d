/** The bibliography: one constant for each work that a page or a check cites. */
export interface Source {
  readonly authors: string;
  readonly title: string;
  readonly published: string;
  /** How the values were taken: read in the work, restated by another that was read, or recalled from memory. */
  readonly status: "read" | "restated" | "from memory";
}

export const irriMoisture: Source = {
  authors: "International Rice Research Institute",
  title: "Moisture content calculations",
  published: "Rice Knowledge Bank",
  status: "read",
};

export const iowaMoistureBasis: Source = {
  authors: "Iowa State University Extension",
  title: "Moisture Basis Conversions",
  published: "PM 1625",
  status: "read",
};

export const iso1573: Source = {
  authors: "International Organization for Standardization",
  title: "Tea: determination of loss in mass at 103 °C",
  published: "ISO 1573:1980, as compared in the foreword of GB/T 8304-2013",
  status: "restated",
};

export const iso5725Range: Source = {
  authors: "International Organization for Standardization",
  title: "Accuracy of measurement methods and results: use in practice of accuracy values",
  published: "ISO 5725-6:1994",
  status: "from memory",
};

export const iso1572: Source = {
  authors: "International Organization for Standardization",
  title: "Tea: preparation of ground sample of known dry matter content",
  published: "ISO 1572:1980",
  status: "restated",
};

export const quam: Source = {
  authors: "EURACHEM and CITAC",
  title: "Quantifying Uncertainty in Analytical Measurement",
  published: "Guide CG 4",
  status: "read",
};

export const gum: Source = {
  authors: "Joint Committee for Guides in Metrology",
  title: "Guide to the expression of uncertainty in measurement",
  published: "JCGM 100:2008",
  status: "from memory",
};

export const junshanProcess: Source = {
  authors: "Published description of a bud yellow tea process (Junshan type)",
  title:
    "Weights and losses by stage: 300 g charges, about 30 % weight loss in the fixing, 2000 g fresh to 500 g finished",
  published: "the work it was taken from is not recorded",
  status: "restated",
};

export const foodBalanceNotes: Source = {
  authors: "Course notes on food processing, author not named",
  title: "Mass and Energy Balance in Food Processing",
  published: "28 pages in a public library of documents",
  status: "read",
};

export const hellevangBlending: Source = {
  authors: "K. J. Hellevang, North Dakota State University Extension",
  title: "Grain Moisture Content Effects and Management",
  published: "Fargo, North Dakota; quoted at length by a page that was read",
  status: "restated",
};

export const jacobsenMicrowave: Source = {
  authors: "K. L. Jacobsen",
  title: "Use of a Microwave Oven to Measure Dry Matter of Wet Feeds",
  published: "FARM LLC, instruction sheet",
  status: "read",
};

export const wardMoisture: Source = {
  authors: "Ward Laboratories",
  title: "Moisture conversion, actual to dry basis",
  published: "table and example of the laboratory, 2024",
  status: "read",
};

export const teaWaterLoss: Source = {
  authors: "Note in a Chinese periodical on the moisture of tea in manufacture",
  title: "100 kg of fresh leaf go from 78 to 60 % moisture in the fixing, which takes 45 kg of water",
  published: "its opening was read in an index of periodicals that names neither author nor year",
  status: "read",
};

export const outturnCircular: Source = {
  authors: "Sri Lanka Tea Board",
  title: "Circular MF/BL 66: an outturn of 22.22 % is 4.5 kg of fresh leaf for each kg made, one of 21.5 % is 4.65 kg",
  published: "2 October 1985",
  status: "read",
};

export const silageShrink: Source = {
  authors: "K. Lee, after T. Brown and B. Holmes",
  title: "Reduce costly silage shrink losses",
  published: "Progressive Dairy, progressivedairy.com",
  status: "read",
};

export const armyBuses: Source = {
  authors: "National Assessment of Educational Progress",
  title: "An army bus holds 36 soldiers; 1128 soldiers need 32 buses",
  published:
    "as A. H. Schoenfeld tells it in Cognitive Science and Mathematics Education (1987), quoted by a page that was read",
  status: "restated",
};

export const numpySplit: Source = {
  authors: "NumPy developers",
  title: "The function that splits an array into nearly equal parts",
  published: "NumPy reference",
  status: "read",
};

export const berkeleyAdmissions: Source = {
  authors: "R Core Team, after P. J. Bickel, E. A. Hammel and J. W. O'Connell",
  title: "UCBAdmissions: student admissions at UC Berkeley, 1973",
  published: "documentation and data of R's package datasets",
  status: "read",
};

export const icalendar: Source = {
  authors: "B. Desruisseaux",
  title: "Internet Calendaring and Scheduling Core Object Specification (iCalendar)",
  published: "RFC 5545, of whose section 3.8.5.3 an excerpt was read",
  status: "restated",
};

export const leafPriceReport: Source = {
  authors: "The Hindu BusinessLine",
  title: "Tea Board fixes highest ever average price for small growers",
  published: "2 October 2020",
  status: "read",
};

export const mommeDefinition: Source = {
  authors: "Hitachi High-Tech",
  title: "Momme, an old unit of weight",
  published: "pages on units",
  status: "read",
};

export const muOfLand: Source = {
  authors: "Wikipedia contributors",
  title: "Mu (land)",
  published: "table of the area units in effect since 1930",
  status: "read",
};

export const hectareAndAcre: Source = {
  authors: "Dictionary of units of a conversion site",
  title: "Hectare: 10 000 square meters or 2.471 054 acres",
  published: "page on the mu and the hectare",
  status: "read",
};

export const tartuWeighing: Source = {
  authors: "University of Tartu, testing centre",
  title: "Uncertainty of simple weighing",
  published: "collection of worked examples of uncertainty",
  status: "read",
};

export const yardAndPound: Source = {
  authors: "International yard and pound agreement",
  title: "Yard of 0.9144 m and pound of 0.45359237 kg, exact by definition",
  published: "1959",
  status: "from memory",
};

export const largestRemainder: Source = {
  authors: "Published worked example of apportionment",
  title: "Populations 247, 185, 459, 400, 413 for 42 seats by largest remainder: 6, 5, 11, 10, 10",
  published: "the work it was taken from is not recorded",
  status: "restated",
};

export const brittLuecke: Source = {
  authors: "H. I. Britt and R. H. Luecke",
  title: "The estimation of parameters in nonlinear, implicit models",
  published: "Technometrics 15 (1973)",
  status: "from memory",
};

export const weightedMean: Source = {
  authors: "Unit of research in the teaching of mathematics, University of Genoa",
  title: "Three readings of one resistance, 11 ± 1, 12 ± 1 and 10 ± 3, and their weighted mean 11.42105 ± 0.6882472",
  published: "exercise page, macosa.dima.unige.it",
  status: "read",
};

export const knepperGorman: Source = {
  authors: "J. C. Knepper and J. W. Gorman",
  title: "Statistical analysis of constrained data sets",
  published: "AIChE Journal 26 (1980)",
  status: "from memory",
};

export const narasimhanJordache: Source = {
  authors: "S. Narasimhan and C. Jordache",
  title: "Data Reconciliation and Gross Error Detection",
  published: "the six-flow example, as an open collection of benchmarks restates it",
  status: "restated",
};

export const nistTn1297: Source = {
  authors: "B. N. Taylor and C. E. Kuyatt, National Institute of Standards and Technology",
  title: "Guidelines for Evaluating and Expressing the Uncertainty of NIST Measurement Results",
  published: "NIST Technical Note 1297",
  status: "read",
};

export const nistNoInt1: Source = {
  authors: "National Institute of Standards and Technology",
  title: "Statistical Reference Datasets, linear regression: NoInt1",
  published: "NIST StRD, as the tests of open statistics libraries restate its certified values",
  status: "restated",
};

export const nistMavro: Source = {
  authors: "National Institute of Standards and Technology",
  title: "Statistical Reference Datasets, univariate summary statistics: Mavro",
  published: "NIST StRD, as the tests of open statistics libraries restate its data and certified values",
  status: "restated",
};

export const pennStateSampleSize: Source = {
  authors: "Pennsylvania State University, Department of Statistics",
  title: "STAT 800: Applied Research Methods",
  published: "online course notes, lesson 4.6.4",
  status: "read",
};

export const nzDesiccatingGoods: Source = {
  authors: "New Zealand, Trading Standards",
  title: "Desiccating goods",
  published: "guidance page",
  status: "read",
};

export const ukPackageSchedule: Source = {
  authors: "United Kingdom",
  title: "The Weights and Measures (Packaged Goods) Regulations 2006",
  published: "SI 2006/659, legislation.gov.uk; its mean test is the formula of 76/211/EEC, Annex II, 2.3",
  status: "read",
};

export const ukPackagedGoods: Source = {
  authors: "United Kingdom, government guidance",
  title: "Packaged goods",
  published: "gov.uk",
  status: "read",
};

export const ukPackagedGoodsGuidance: Source = {
  authors: "United Kingdom, trading standards guidance",
  title: "Packaged goods: not more than 2.5 % short by more than the tolerance, none by more than twice",
  published: "tradingstandards.gov.uk; the law's own sampling plans give numbers in place of its shares",
  status: "read",
};

export const safeguardsBalance: Source = {
  authors: "Nuclear Safeguards Education Portal, Texas A&M University",
  title: "Material unaccounted for: MUF = (PB + X − Y) − PE",
  published: "pages of the portal",
  status: "read",
};

export const oneCertBalance: Source = {
  authors: "OneCert",
  title: "A + B − D = C, for 7 CFR 205.403(d)(4): inputs account for outputs",
  published: "as a page of this certifier of 15 May 2024 quotes both",
  status: "restated",
};

export const nistBoxBod: Source = {
  authors: "National Institute of Standards and Technology",
  title: "Statistical Reference Datasets, nonlinear regression: BoxBOD",
  published: "NIST StRD, as the tests of open statistics libraries restate its data and certified values",
  status: "restated",
};

export const geankoplisDrying: Source = {
  authors: "C. J. Geankoplis",
  title: "Transport Processes and Unit Operations: drying tests with a foodstuff, problem 9.7-2",
  published: "as problem sheets restate the data; number of the problem and edition from memory",
  status: "restated",
};

export const panchariyaDrying: Source = {
  authors: "P. C. Panchariya, D. Popovic and A. L. Sharma",
  title: "Thin-layer modelling of black tea drying process",
  published: "Journal of Food Engineering, accepted 2001; its abstract was read",
  status: "read",
};

export const sharmaWithering: Source = {
  authors: "Sharma and Dutta",
  title: "On the withering of tea: the law named after Page fits it, R² 0.9989",
  published: "Research in Agricultural Engineering 69(2), 2023; its abstract was read",
  status: "read",
};

export const pageThesis: Source = {
  authors: "G. E. Page",
  title: "Thesis on the drying of thin layers of shelled corn",
  published: "Purdue University, 1949",
  status: "from memory",
};

export const golubPereyra: Source = {
  authors: "G. H. Golub and V. Pereyra",
  title: "The differentiation of pseudo-inverses and nonlinear least squares problems whose variables separate",
  published: "SIAM Journal on Numerical Analysis 10 (1973)",
  status: "from memory",
};

export const bakerScheduling: Source = {
  authors: "K. R. Baker",
  title: "Introduction to Sequencing and Scheduling",
  published: "1974",
  status: "from memory",
};

export const grahamAnomalies: Source = {
  authors: "R. L. Graham",
  title: "Bounds for certain multiprocessing anomalies",
  published: "Bell System Technical Journal 45 (1966)",
  status: "from memory",
};

export const iglewiczHoaglin: Source = {
  authors: "B. Iglewicz and D. C. Hoaglin",
  title: "How to Detect and Handle Outliers",
  published: "as the NIST/SEMATECH e-Handbook of Statistical Methods gives it",
  status: "from memory",
};

export const modifiedScores: Source = {
  authors: "Statistics page, author not named",
  title: "Modified z score: eight observations, the last one far off, with their scores",
  published: "codingace.net/ds",
  status: "read",
};
