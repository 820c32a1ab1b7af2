/** Short source keys of the constituent data, spelt out. */
export const constituentSources: Readonly<Record<string, string>> = {
  'LB-Antoine':
    "Landolt-Börnstein New Series IV/20 A-C (Hall; Dykyj, Svoboda, Wilhoit, Frenkel, Hall, 1999-2001), Antoine constants as carried in `chemicals` data tables, 'Landolt_antoine_V20.tsv' (converted there to Pa, K, natural log)",
  WebBook:
    "NIST Chemistry WebBook constants as carried in `chemicals` data tables 'webbook_constants.tsv' (WebBook Antoine fits for these compounds are mostly of Stull 1947 data - attribution to Stull is from memory)",
  'Yaws-VP':
    "Yaws' Handbook vapour-pressure Antoine coefficients as carried in `vp_model` data 'Yaw_vp_w_SMILES.csv' (code 1,2 = includes experimental data; code 2/3 = estimate; meaning of the codes not confirmed)",
  'Yaws-Tb': "Yaws boiling points, `chemicals` data tables 'Yaws Boiling Points.tsv'",
  'Yaws-Tc': "Yaws critical properties, `chemicals` data tables 'Yaws Collection.tsv'",
  'CRC-phys':
    "CRC Handbook 'Physical Constants of Organic Compounds' as carried in `chemicals` data tables (density column there has the reference temperature glued on as trailing digits, e.g. 853.925 = 0.8539 at 25 C)",
  CommonChem: "CAS Common Chemistry (`chemicals` data tables 'common_chemistry_data.tsv')",
  Poling: "Poling/Prausnitz/O'Connell 5th ed., `chemicals` data tables",
  'Hvap-Ghazerati':
    'Ghazerati appendix of vaporisation enthalpies at 298 K (compilation largely after Chickos & Acree), `chemicals` data tables',
  Zabransky: "Zabransky et al. critical review of liquid heat capacities, `chemicals` data tables 'Zabransky.tsv'",
  'CRC-thermo': 'CRC standard thermodynamic properties, `chemicals` data tables',
  'Dadgostar-Shaw': 'estimated: Dadgostar-Shaw (2011/2012) similarity-variable correlation (atoms per gram)',
  AqSolDB:
    'AqSolDB (Sorkun 2019), sub-dataset given: A=eChemPortal/REACH dossiers, B=Meylan 1995 (Syracuse), C=Raevsky 2014, D=Meylan&Howard 1994, E=Huuskonen 2000-type set, G=Delaney ESOL 2004, H/I others',
  Syrres: "Syracuse (PHYSPROP) experimental logP set, `chemicals` data tables 'Syrres logP data'",
  'CRC-logP': 'CRC logP table, `chemicals` data tables',
  'DIPPR-FP': "DIPPR flash points via Serat, `chemicals` data tables 'DIPPR T_flash Serat.csv'",
  'IEC-FP': 'IEC 60079-20-1:2010 flash points, `chemicals` data tables',
  'NFPA-FP': 'NFPA 497-2008 flash points, `chemicals` data tables',
  ViswNat: 'Viswanath & Natarajan viscosity correlation, `chemicals` data tables',
  Sutherland1948:
    'M. D. Sutherland, Univ. Queensland Dept. Chem. Paper 1(34), 1948, review of terpene densities; read from an OCR excerpt, reference temperature 25 C inferred from p-cymene/limonene',
  Keating2017:
    'Keating, Harris, Chickos, J. Chem. Thermodyn. 107 (2017) 18-25 (abstract): bisabolol p(298.15)=0.020±0.003 Pa, dHvap 96.6±2.4, Tb 574.8 K calc.; dl-menthol 4.5±0.44 Pa, 74.2±2.8, 492.7 K calc.',
  Nelson2017:
    'Nelson & Chickos, J. Chem. Thermodyn. 115 (2017) 253-260 (abstract): cedrol dHvap(298.15)=88.3±1.5 kJ/mol',
  Static1999:
    'static vapour-pressure measurements abstract (Elsevier 1999; d-linalool 27 Pa, d-limonene 200 Pa at 298 K; probably Espinosa Diaz et al., Fluid Phase Equilib. 157, 257 - citation from memory)',
  ICSC: 'ILO/WHO ICSC for linalool via French encyclopaedia: 21 Pa and 1.6 g/L at 25 C, flash 75 C; German encyclopaedia mirror gives 23 Pa at 25 C',
  'Merck-chamaz':
    'Merck Index 11th ed. no. 2031 via public encyclopaedia: chamazulene boiling point at 12 mmHg 161 C, d20 0.9883',
  Gildemeister:
    'Gildemeister & Hoffmann, The Volatile Oils vol. 1: alpha-santalol bp 300-301 (760 mm), 301-302 (752 mm), 162-163 (13 mm), 155 (8 mm); sabinene bp 163-165 C, d20 0.842',
  'supplier safety data sheet': 'Supplier safety data sheet of linalool: flash point 75 C',
  encyclopaedia:
    'Public encyclopaedia, linalool: density 0.858-0.868, bp 198-199 C, 1.589 g/L, flash 55 C (the flash disagrees with 75 C of ICSC/MSDS)',
  Stull:
    'Stull, Vapor pressure of pure substances, Ind. Eng. Chem. 39 (1947) 517-540, table of organic compounds; temperatures from memory of the table as handbooks reprint it',
  memory: 'from memory (supplier catalogue / general reference value), not re-read here',
  OpenNotebook: 'Open Notebook melting-point data set, as carried in the `chemicals` data tables',
};
