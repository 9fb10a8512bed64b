// Written by `make clients` from the contract: change the contract, not this file.

/** Above ground, on supports. */
export interface AboveGroundSetting {
  /** Fixed text that says: above ground. */
  kind: "above_ground";
  /** Travel of one expansion fitting. From 0.25 in to 60 in. */
  fitting_travel?: Length;
  /**
   * How the structure itself moves with temperature: only the difference moves the conduit. From 1e-07 1/degF to
   * 0.001 1/degF.
   */
  structure_coefficient?: ExpansionCoefficient;
  /** Joints of a structure that moves, such as a bridge. */
  structure_joints?: StructureJoint[];
  /**
   * Most that supports may stand apart; where the rule of the conduit allows less, that holds. From 0.25 ft to
   * 1000 ft.
   */
  support_spacing?: Length;
  /** What holds it. */
  supports?: SupportKind;
  /** What it meets there beside being above ground. */
  uses?: ConduitUse[];
}

/** The process answers. */
export interface Alive {
  /** The word `alive`. */
  status: string;
}

/** The answer of ampacity with everything that defends it. */
export interface AmpacityAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: AmpacityResult;
  /** The request with every default filled in, if asked for. */
  request?: AmpacityRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of ampacity. */
export interface AmpacityItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: ampacity. */
  operation: "ampacity";
  /** The body of `POST /v1/ampacity`. */
  request: AmpacityRequest;
}

/** An answer of ampacity. */
export interface AmpacityItemAnswer {
  /** The answer of `POST /v1/ampacity`. */
  answer: AmpacityAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: ampacity. */
  operation: "ampacity";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const AMPACITY_METHOD_VALUES = ["neher_mcgrath", "iec_60287", "both"] as const;
/**
 * Methods of calculating ampacity; both asks for the one that allows less, with the other beside it. Answers may
 * bring others.
 */
export type AmpacityMethod = (typeof AMPACITY_METHOD_VALUES)[number] | (string & {});

/** A bank in the earth, and the circuits in its ducts. */
export interface AmpacityRequest {
  /** The duct bank; ducts without a circuit are empty. */
  bank: DuctBank;
  /** The circuits. One without a current is looked for: all of them carry alike in every conductor. */
  circuits: LoadedCircuit[];
  /** Encased in concrete, or ducts buried directly. */
  setting: BankSetting;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /** Concrete outside the ducts, where they are encased. */
  concrete_cover?: ConcreteCover;
  /** Thermal resistivity of the concrete. From 20 degC.cm/W to 1000 degC.cm/W. */
  concrete_thermal_resistivity?: ThermalResistivity;
  /** Earth over the envelope, or over the ducts if there is none; this or depth. From 0 in to 1200 in. */
  cover?: Length;
  /**
   * From grade to the center of the envelope, or of the ducts if there is none; this or cover. From 0 in to 1200
   * in.
   */
  depth?: Length;
  /** Temperature that the air in every duct is taken to have, as printed tables do. From 0 degC to 150 degC. */
  duct_air_temperature?: Temperature;
  /** What ducts without a type are made of, for their heat; of the others their type tells. */
  duct_material?: WallMaterial;
  /** Thermal resistivity of the duct walls. From 0 K.m/W to 50 K.m/W. */
  duct_thermal_resistivity?: ThermalResistivity;
  /** Temperature of the earth at that depth, away from the cables. From -20 degC to 70 degC. */
  earth_temperature?: Temperature;
  /** Thermal resistivity of the earth and the backfill. From 20 degC.cm/W to 1000 degC.cm/W. */
  earth_thermal_resistivity?: ThermalResistivity;
  /** Frequency of the alternating current. From 10 Hz to 400 Hz. */
  frequency?: Frequency;
  /** Method; both gives the one that allows less, with the other beside it. */
  method?: AmpacityMethod;
  /** What is asked beside the ampacity. */
  studies?: AmpacityStudy[];
}

/** What the bank may carry, and how warm it becomes. */
export interface AmpacityResult {
  /** The least of the circuits, each with all its sets. */
  ampacity: Current;
  /** From grade to the center of the envelope. */
  center_depth: Length;
  /** The circuits, as in the request. */
  circuits: CircuitAmpacity[];
  /** Loaded ducts, circuit by circuit. */
  ducts: DuctHeat[];
  /** Height of the concrete, or of the bare ducts. */
  envelope_height: Length;
  /** Width of the concrete, or of the bare ducts. */
  envelope_width: Length;
  /** The duct whose conductor is nearest to its limit. */
  governing_duct: string;
  /** Temperature of the conductor of governing_duct. */
  governing_temperature: Temperature;
  /** The method of the figures; of both the one that allows less. */
  method: AmpacityMethod;
  /** Ampacity of the circuit that governs, all its sets, were each duct loaded alone. */
  single_duct_ampacity: Current;
  /** What the circuit that governs may carry here, over single_duct_ampacity. */
  single_duct_ratio: number;
  /** By which all currents may be multiplied, where all are given. */
  current_factor?: number;
  /** Largest resistivity of the earth in which the currents are still carried; if asked. */
  largest_earth_resistivity?: ThermalResistivity;
  /** Where both were asked. */
  other_method?: OtherMethod;
  /** What each figure of the earth does to the ampacity, if asked. */
  sensitivities?: AmpacitySensitivity[];
  /** Smallest clear separation of all ducts at which the currents are still carried; if asked. */
  smallest_separation?: Length;
  /** Smallest size that carries the currents, taken by all circuits alike; if asked. */
  smallest_size?: ConductorSize;
}

/** What a member of the request, greater by a step, makes of the ampacity. */
export interface AmpacitySensitivity {
  /** The ampacity then. */
  ampacity: Current;
  /** Change of the ampacity in percent; negative where it falls. */
  ampacity_change_percent: number;
  /** Name of the member that is greater, such as cover. */
  member: string;
  /** By how much the member is greater. */
  step_percent: number;
}

/** An answer of ampacity. */
export interface AmpacityStreamAnswer {
  /** The answer of `POST /v1/ampacity`. */
  answer: AmpacityAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: ampacity. */
  operation: "ampacity";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const AMPACITY_STUDY_VALUES = ["sensitivity", "smallest_size", "largest_earth_resistivity", "smallest_separation"] as const;
/** What may be asked beside the ampacity. */
export type AmpacityStudy = (typeof AMPACITY_STUDY_VALUES)[number];

/** An angle with its unit. */
export interface Angle {
  /** The unit, by its code. */
  unit: AngleUnit;
  /** The number, in the unit. */
  value: number;
}

export const ANGLE_UNIT_VALUES = ["deg", "rad"] as const;
/** Units of angle. */
export type AngleUnit = (typeof ANGLE_UNIT_VALUES)[number];

/** A value with its unit, of whatever dimension the text beside it says. */
export interface AnyQuantity {
  /** The unit, by its code in the table of units. */
  unit: string;
  /** The number, in the unit. */
  value: number;
}

/** Pull points may stand anywhere on a straight, at places no more than a spacing apart. */
export interface Anywhere {
  /** Fixed text that says: anywhere on straights. */
  kind: "anywhere";
  /** Greatest distance between places. From 0.25 ft to 1000 ft. */
  spacing: Length;
}

/** An apparent power with its unit. */
export interface ApparentPower {
  /** The unit, by its code. */
  unit: ApparentPowerUnit;
  /** The number, in the unit. */
  value: number;
}

export const APPARENT_POWER_UNIT_VALUES = ["kVA"] as const;
/** Units of apparent power. */
export type ApparentPowerUnit = (typeof APPARENT_POWER_UNIT_VALUES)[number];

export const ARCHING_SOIL_VALUES = ["granular", "sand_and_gravel", "saturated_topsoil", "clay", "saturated_clay"] as const;
/** Fills of a trench, by their friction on its walls. */
export type ArchingSoil = (typeof ARCHING_SOIL_VALUES)[number];

/** An area with its unit. */
export interface Area {
  /** The unit, by its code. */
  unit: AreaUnit;
  /** The number, in the unit. */
  value: number;
}

export const AREA_UNIT_VALUES = ["mm2", "cm2", "m2", "in2", "ft2"] as const;
/** Units of area. */
export type AreaUnit = (typeof AREA_UNIT_VALUES)[number];

/** A value taken for want of one, with every member it stands in for; a quantity too, where it is a figure. */
export interface Assumption {
  /** Where it comes from, or that it is practice. */
  citation: string;
  /** JSON pointers of the members that were left out. */
  pointers: string[];
  /** With what right it is taken. */
  standing: Standing;
  /** The value as a text. */
  text: string;
  /** The value, where it is a figure. */
  quantity?: AnyQuantity;
  /** Id of the source in the table of sources. */
  source_id?: string;
}

export const ASSUMPTION_POLICY_VALUES = ["state", "refuse"] as const;
/** What to do where a field was left out: state what was assumed, or refuse to assume. */
export type AssumptionPolicy = (typeof ASSUMPTION_POLICY_VALUES)[number];

export const ATTACHMENT_VALUES = ["pulling_eye", "basket_grip"] as const;
/** Ways to hold the cable: by its conductors or by its jacket. */
export type Attachment = (typeof ATTACHMENT_VALUES)[number];

export const BANK_ALIGNMENT_VALUES = ["centered", "left", "right"] as const;
/** Alignments of tiers of different width. */
export type BankAlignment = (typeof BANK_ALIGNMENT_VALUES)[number];

/** Bare conductors in the envelope. */
export interface BankGround {
  /** Size of the conductor. */
  size: ConductorSize;
  /** Conductors beside each other. */
  conductor_count?: number;
  /** What each conductor needs beyond each end of the bank. From 0 ft to 1000 ft. */
  end_length?: Length;
  /** Waste on the length, in percent. */
  waste_percent?: number;
}

/** The conductors of the ground. */
export interface BankGroundTakeoff {
  /** All conductors with both their ends. */
  conductor_length: Length;
  /** All conductors with both their ends, with waste. */
  order_length: Length;
  /** Size of the conductors. */
  size: ConductorSize;
}

export const BANK_SETTING_VALUES = ["encased", "direct_buried"] as const;
/** Whether a bank is encased in concrete or its ducts are buried directly. */
export type BankSetting = (typeof BANK_SETTING_VALUES)[number];

export const BAR_SIZE_VALUES = ["no_3", "no_4", "no_5", "no_6", "no_8"] as const;
/** Reinforcing bars. Answers may bring others. */
export type BarSize = (typeof BAR_SIZE_VALUES)[number] | (string & {});

/** A bare conductor by size, from Chapter 9, Table 8; the circle around all strands counts. */
export interface BareCable {
  /** Fixed text that says: bare. */
  kind: "bare";
  /** Conductor size. */
  size: ConductorSize;
  /** Pull per metal area that the conductor bears, in place of the published one. From 1 MPa to 1000 MPa. */
  allowable_stress?: Pressure;
  /**
   * Least bending radius of the cable's maker, to the inner wall, in place of the code's. From 0.5 in to 120000
   * in.
   */
  bending_radius?: Length;
  /** Kind of cable, for its sidewall pressure. */
  cable_type?: CableType;
  /** What slides on the conduit, for its published friction. */
  jacket?: CableJacket;
  /**
   * Mass per length of one cable; of building wire it is derived from metal and insulation. From 0.0001 lb/ft to
   * 1000 lb/ft.
   */
  mass_per_length?: MassPerLength;
  /** Metal of the conductor, for its mass and for what it bears. */
  material?: ConductorMaterial;
  /** What a basket grip would hold. */
  sheath?: CableSheath;
  /** Outside diameter of one shielded conductor within an individually shielded cable. From 0.01 in to 60 in. */
  shielded_conductor_diameter?: Length;
  /** Make-up of the cable, for its bending radius. */
  shielding?: CableShielding;
  /** Solid or stranded, where Table 8 has both. */
  stranding?: BareStranding;
  /** Temper or alloy of the metal. */
  temper?: ConductorTemper;
}

export const BARE_STRANDING_VALUES = ["solid", "stranded"] as const;
/** Make-up of a bare conductor. */
export type BareStranding = (typeof BARE_STRANDING_VALUES)[number];

/** What the answer rests on. */
export interface Basis {
  /** Version of the service. */
  service_version: string;
  /** Ids of the sources that the answer rests on. */
  source_ids: string[];
  /** Hash of all reference tables. */
  tables_version: string;
  /** Code and edition followed; absent where a calculation follows none. */
  code_edition?: string;
}

/** What became of each question, in order. */
export interface BatchAnswer {
  /** How many of the questions ended in a problem. */
  failed_count: number;
  /** How many questions the batch had. */
  item_count: number;
  /** What became of each, in the order asked. */
  items: BatchItemAnswer[];
}

/** One question of a batch, or one line of a stream. */
export type BatchItem =
  | AmpacityItem
  | ConductorCountItem
  | ConduitSizeItem
  | CoverItem
  | DuctRunItem
  | DuctRunComparisonItem
  | EarthLoadItem
  | EncasementItem
  | ExpansionItem
  | FillItem
  | FlotationItem
  | JointsItem
  | PermittedUseItem
  | PullBoxItem
  | PullPlanItem
  | PullTensionItem
  | SpacersItem
  | SupportsItem
  | TrenchItem
  | VoltageDropItem;

/** What became of one question: its answer or its problem. */
export type BatchItemAnswer =
  | ItemAnswer
  | ItemProblem;

/** Questions to answer in one go. */
export interface BatchRequest {
  /** The questions, of any calculations in any order. */
  items: BatchItem[];
}

export const BEND_MADE_VALUES = ["factory_elbow", "field_bend", "laid_on_curve"] as const;
/** How a bend comes about: bought as an elbow or sweep, bent on site, or laid straight on a wide curve. */
export type BendMade = (typeof BEND_MADE_VALUES)[number];

/** Pull points may stand at either end of every straight. */
export interface BetweenSections {
  /** Fixed text that says: at the ends of straights. */
  kind: "between_sections";
}

/** In a bore; how the ducts are drawn into it is not judged. */
export interface BoredSetting {
  /** Fixed text that says: in a directional bore. */
  kind: "bored";
  /** Diameter to which it is reamed. From 0.01 in to 60 in. */
  bore_diameter?: Length;
  /** Circle around the ducts drawn in together. From 0.01 in to 60 in. */
  bundle_diameter?: Length;
  /** Least earth over the ducts along the bore. From 0 in to 1200 in. */
  cover?: Length;
  /** Density of the fluid in the bore: gives how hard the ducts float in it. From 20 lb/ft3 to 300 lb/ft3. */
  drilling_fluid_density?: Density;
  /** What is in the ducts while they are drawn in. */
  duct_contents?: DuctContents;
  /** What lies above, for the least cover. */
  location?: BurialLocation;
}

/** A box that can be had. */
export interface BoxCandidate {
  /** From back to front. */
  depth: Length;
  /** From left to right, as listed. */
  length: Length;
  /** JSON pointer of its size. */
  pointer: string;
  /** Whether it holds the entries with length and width exchanged. */
  turned: boolean;
  /** Whether it holds the entries, so far apart as they must lie. */
  verdict: Verdict;
  /** From bottom to top, as listed. */
  width: Length;
}

/** Conductors that enter a box together and leave it together. */
export interface BoxCircuit {
  /** Its name, by which the entries speak of it. */
  name: string;
  /** Its cables, all of those in one raceway; needed over the threshold voltage. */
  cables?: CableLine[];
  /** Whether it is spliced or tapped in the box. */
  spliced?: boolean;
}

/** A raceway that enters a box, or above the threshold voltage a cable. */
export interface BoxEntry {
  /** Names of the circuits in it. */
  circuits: string[];
  /** Wall it enters through. */
  wall: BoxWall;
  /** Its raceway; needed to the threshold voltage, over which the cables alone decide. */
  conduit?: Conduit;
  /**
   * Its center across the row, from the back of the box; in the back itself from the bottom. From 0 in to 1200
   * in.
   */
  offset?: Length;
  /** Its center along the row, from the left or from the bottom of the wall. From 0 in to 1200 in. */
  position?: Length;
  /** Row of its wall, from 1 at the back; of the back itself from the bottom. */
  row?: number;
}

/** Where pull points may stand. */
export type BoxPositions =
  | Anywhere
  | BetweenSections
  | ListedPositions;

export const BOX_RULE_VALUES = ["straight_pull", "opposite_wall", "entries_apart", "bending_space", "bending_radius", "room_for_entries", "least_structure", "racking"] as const;
/** What sets the least of a dimension. Answers may bring others. */
export type BoxRule = (typeof BOX_RULE_VALUES)[number] | (string & {});

/** Inside dimensions of a box; of a handhole without a bottom the depth is to the ends of the raceways. */
export interface BoxSize {
  /** From back to front. From 0.1 in to 1200 in. */
  depth: Length;
  /** From left to right. From 0.1 in to 1200 in. */
  length: Length;
  /** From bottom to top. From 0.1 in to 1200 in. */
  width: Length;
}

export const BOX_WALL_VALUES = ["left", "right", "top", "bottom", "back", "front"] as const;
/** Walls of a box, looking at its front; of a manhole the front is its roof and the back its floor. */
export type BoxWall = (typeof BOX_WALL_VALUES)[number];

/** The pull at the low friction, at which the cable runs away most, from its own least brake. */
export interface BrakingCase {
  /** The low coefficient. */
  friction_coefficient: number;
  /** Highest tension anywhere along the pull. */
  highest_tension: Force;
  /** Tension at the pulling end. */
  tension: Force;
  /** Force with which the reel must hold back, if it must. */
  brake_tension?: Force;
  /** Highest sidewall pressure, if there is a bend. */
  sidewall_pressure?: ForcePerLength;
}

export const BURIAL_LOCATION_VALUES = ["not_otherwise_specified", "trench_below_2_in_concrete", "under_building", "under_4_in_exterior_slab_no_vehicles", "street_road_driveway_parking_lot", "dwelling_driveway", "airport_runway"] as const;
/** Where it is buried. */
export type BurialLocation = (typeof BURIAL_LOCATION_VALUES)[number];

/** A conductor or cable: one of the tables, or by its measures. */
export type Cable =
  | BareCable
  | CompactCable
  | ListedCable
  | MeasuredCable
  | MulticonductorCable;

export const CABLE_ARRANGEMENT_VALUES = ["single", "two", "triangular", "triplexed", "cradled", "diamond", "many", "worst_case"] as const;
/**
 * How cables lie in the conduit; three cables lie triangular or cradled, triplexed if twisted at the factory. In
 * the worst case each check takes the arrangement that asks most. Answers may bring others.
 */
export type CableArrangement = (typeof CABLE_ARRANGEMENT_VALUES)[number] | (string & {});

/** The conductors within one cable, which a pulling eye holds and which carry the current. */
export interface CableConductor {
  /** Conductors of this size in one cable, shields and grounds not counted. */
  count: number;
  /** Metal of the conductor. */
  material: ConductorMaterial;
  /** Pull per metal area that the conductor bears, in place of the published one. From 1 MPa to 1000 MPa. */
  allowable_stress?: Pressure;
  /** Metal area of one conductor; give this or the size. From 0.1 kcmil to 10000 kcmil. */
  area?: ConductorArea;
  /** Conductor size; give this or the area. */
  size?: ConductorSize;
  /** Temper or alloy of the metal. */
  temper?: ConductorTemper;
}

/** The insulation of one conductor, with the screens on both sides of it. */
export interface CableInsulation {
  /** What it is made of. */
  material: CoveringMaterial;
  /** Its thermal resistivity. From 0.01 K.m/W to 50 K.m/W. */
  thermal_resistivity?: ThermalResistivity;
  /**
   * Its wall; of several conductors in one jacket this is what tells how they lie. What is left up to the jacket
   * is taken for insulation, unless a shield lies there. From 0.001 in to 10 in.
   */
  thickness?: Length;
}

export const CABLE_JACKET_VALUES = ["pe", "pvc", "neoprene"] as const;
/** Jackets with a published friction in conduit. */
export type CableJacket = (typeof CABLE_JACKET_VALUES)[number];

/** The jacket around the cable. */
export interface CableJacketLayer {
  /** What it is made of. */
  material: CoveringMaterial;
  /** Its wall. From 0.001 in to 10 in. */
  thickness: Length;
  /** Its thermal resistivity. From 0.01 K.m/W to 50 K.m/W. */
  thermal_resistivity?: ThermalResistivity;
}

/** What lies between the conductor of a cable and its surface. */
export interface CableLayers {
  /** Insulation of one conductor. */
  insulation: CableInsulation;
  /** Diameter of one conductor. From 0.01 in to 60 in. */
  conductor_diameter?: Length;
  /**
   * Resistance of one conductor to direct current at 20 degC, in place of that of its metal area. From 0.0001
   * ohm/1000ft to 1000 ohm/1000ft.
   */
  conductor_resistance?: ResistancePerLength;
  /** Jacket of the cable, if it has one. */
  jacket?: CableJacketLayer;
  /** Metal shield of one conductor, if it has one. */
  shield?: CableShield;
}

/** So many of one cable. */
export interface CableLine {
  /** The cable. */
  cable: Cable;
  /** How many, grounding and bonding conductors included. */
  count: number;
}

/** What is added to the route at each of its two ends, and how the cable comes. */
export interface CableOrder {
  /** Cable around the walls of a manhole or vault, at each end. From 0 ft to 1000 ft. */
  racking_length?: Length;
  /** Cable on one reel. From 1 ft to 100000 ft. */
  reel_length?: Length;
  /** Cable cut away at a splice, at each end. From 0 ft to 1000 ft. */
  splice?: Length;
  /** Cable beyond the conduit at each end, for grip, pull-through and termination. From 0 ft to 1000 ft. */
  tail?: Length;
  /** Waste added to the length. */
  waste_percent?: number;
}

export const CABLE_SHEATH_VALUES = ["nonmetallic", "copper_or_aluminum"] as const;
/** What a basket grip holds. */
export type CableSheath = (typeof CABLE_SHEATH_VALUES)[number];

/** The metal shield over the insulation of one conductor. */
export interface CableShield {
  /** Its mean diameter. From 0.01 in to 60 in. */
  mean_diameter?: Length;
  /** Area of its copper; this or the resistance. From 0.1 kcmil to 10000 kcmil. */
  metal_area?: ConductorArea;
  /** Its resistance at 20 degC; this or the area of its copper. From 0.0001 ohm/1000ft to 1000 ohm/1000ft. */
  resistance?: ResistancePerLength;
}

export const CABLE_SHIELDING_VALUES = ["nonshielded", "shielded", "individually_shielded"] as const;
/** Make-up of a cable that sets its least bending radius. */
export type CableShielding = (typeof CABLE_SHIELDING_VALUES)[number];

export const CABLE_TYPE_VALUES = ["general", "instrumentation", "control_nonshielded_600_v", "control_shielded_600_v", "power_nonshielded_600_v", "power_shielded_5_to_15_kv", "power_shielded_25_to_46_kv", "interlocked_armor", "corrugated_armor"] as const;
/** Kinds of cable with a published sidewall pressure; general where it is not known. */
export type CableType = (typeof CABLE_TYPE_VALUES)[number];

/** A usual caution of the work at hand, whatever the figures. */
export interface Caution {
  /** Where it stands, or that it is practice. */
  citation: string;
  /** Which caution, in one stable word for programs: all are listed in docs/findings.md of the service. */
  code: string;
  /** The sentence for people. */
  message: string;
}

export const CHANGE_KIND_VALUES = ["brake_limit", "end_distance", "pigment_percent", "lift_height", "compaction", "fitting_travel", "overcurrent_device", "temperature_limit", "insulation", "grounding_conductor", "radius", "box", "cover", "riser_conduit_type", "conduit_type", "concrete_cover", "separation", "encasement", "conductor_size", "parallel_sets", "trade_size", "pull_point"] as const;
/** What a remedy changes, the cheapest to build first. Answers may bring others. */
export type ChangeKind = (typeof CHANGE_KIND_VALUES)[number] | (string & {});

/** Alike cables in one or several ducts. */
export interface Circuit {
  /** The cables in each of its ducts; these or same_as. */
  cables?: CableLine[];
  /** In place of ducts: how many, the first that are free from the bottom left. */
  duct_count?: number;
  /**
   * The ducts it lies in, tier-position: tier 1 is the bottom one, position 1 the left one, looking from start
   * to end.
   */
  ducts?: string[];
  /** Name of the end or pull point where it ends. */
  end?: string;
  /**
   * Its load: the voltage it loses on its way and what the ducts around it may carry are then told. That of
   * same_as, if left out.
   */
  load?: RunLoad;
  /** Its name. */
  name?: string;
  /** What differs for it from the pulling of the run. */
  pulling?: PullPractice;
  /** Name of the circuit whose cables it has. */
  same_as?: string;
  /** What it carries. */
  service?: Service;
  /** Name of the end or pull point where it begins. */
  start?: string;
  /**
   * Between conductors; without it the cover over power is not judged. That of same_as, if left out. From 1 V to
   * 1e+06 V.
   */
  voltage?: Voltage;
}

/** One circuit, all its sets together. */
export interface CircuitAmpacity {
  /** Current in each loaded conductor. */
  conductor_current: Current;
  /** Temperature of the hottest conductor. */
  conductor_temperature: Temperature;
  /** Current of the circuit, as given or as found that it may be. */
  current: Current;
  /** Its ducts. */
  ducts: string[];
  /** Sets in parallel. */
  parallel_count: number;
  /** Most that its conductors may reach. */
  temperature_limit: Temperature;
  /** table_ampacity, corrected for the earth and the count in a duct. */
  adjusted_table_ampacity?: Current;
  /**
   * What it may carry: where currents are looked for, with the same in every conductor, so that a cooler circuit
   * could carry more; where all are given, with all of them raised alike.
   */
  ampacity?: Current;
  /** Least grounding conductor, where the overcurrent device is given. */
  grounding_conductor?: GroundingSize;
  /** What the request calls it. */
  name?: string;
  /** Ampacity of the circuit by the table of the code, to 2000 V. */
  table_ampacity?: Current;
  /** Current that terminals and insulation allow the circuit. */
  terminal_ampacity?: Current;
  /** Temperature that the terminals are taken for. */
  terminal_temperature?: Temperature;
  /** Where its current was given. */
  verdict?: Verdict;
}

export const CIRCUIT_CONDUIT_VALUES = ["pvc", "aluminum", "steel"] as const;
/** Conduits that Table 9 tells apart. */
export type CircuitConduit = (typeof CIRCUIT_CONDUIT_VALUES)[number];

/** A circuit in one conduit of its way. */
export interface CircuitFill {
  /** The fill of the conduit. */
  fill: FillResult;
  /** The stretches and risers where it lies in such conduit. */
  places: string[];
  /** Its type, where it is given. */
  conduit_type?: ConduitType;
  /** Trade size, where it is given. */
  trade_size?: TradeSize;
}

/** One pull of a circuit between two stops. */
export interface CircuitPulls {
  /** For one duct. */
  cables_to_order: OrderedCable[];
  /** The better direction: forward pulls toward the end. */
  direction: PullDirection;
  /** Names of the ducts pulled alike, as tier-position. */
  ducts: string[];
  /** Stop nearer the end of the run. */
  end: string;
  /** Stop where the reel stands. */
  feed_from: string;
  /** Along the center line. */
  length: Length;
  /** The pull both ways; its sections from the start of the run. */
  pull: PullTensionResult;
  /** Stop where the rope is pulled. */
  pull_to: string;
  /** Stop nearer the start of the run. */
  start: string;
  /** Of the pull in its better direction. */
  verdict: Verdict;
  /** Where pull points would help, if it does not comply. */
  plan?: PullPlanResult;
  /**
   * any_friction: with less no bend is beyond its limit, whatever the friction, none too. friction_assumed: that
   * would stop the pull below what it is expected to need, so the limits are carried on at the friction it is
   * pulled with. Absent without a stop tension.
   */
  stop_basis?: StopBasis;
  /**
   * At the pulling end: stop there. What cable, grip and device bear, or less, where a bend has its sidewall
   * limit before, as stop_basis says. Absent where what the cable bears, or a bend, is not known.
   */
  stop_tension?: Force;
  /**
   * At the pulling end: with less no bend is beyond its limit, whatever the friction, none too. Absent without a
   * stop tension.
   */
  tension_safe_at_any_friction?: Force;
}

export const CIRCUIT_SYSTEM_VALUES = ["three_phase", "single_phase", "direct_current"] as const;
/** Kinds of circuit; of a single phase two wires carry the current. */
export type CircuitSystem = (typeof CIRCUIT_SYSTEM_VALUES)[number];

export const CODE_EDITION_VALUES = ["2017", "2020", "2023"] as const;
/** Editions of NFPA 70 whose numbers and rules an answer can follow. */
export type CodeEdition = (typeof CODE_EDITION_VALUES)[number];

/** Insulated building wire of compact stranding by marking and size, from Chapter 9, Table 5A. */
export interface CompactCable {
  /** Insulation as marked. */
  insulation: Insulation;
  /** Fixed text that says: compact stranding. */
  kind: "compact";
  /** Conductor size. */
  size: ConductorSize;
  /** Pull per metal area that the conductor bears, in place of the published one. From 1 MPa to 1000 MPa. */
  allowable_stress?: Pressure;
  /**
   * Least bending radius of the cable's maker, to the inner wall, in place of the code's. From 0.5 in to 120000
   * in.
   */
  bending_radius?: Length;
  /** Kind of cable, for its sidewall pressure. */
  cable_type?: CableType;
  /** What slides on the conduit, for its published friction. */
  jacket?: CableJacket;
  /**
   * Mass per length of one cable; of building wire it is derived from metal and insulation. From 0.0001 lb/ft to
   * 1000 lb/ft.
   */
  mass_per_length?: MassPerLength;
  /** Metal of the conductor, for its mass and for what it bears. */
  material?: ConductorMaterial;
  /** What a basket grip would hold. */
  sheath?: CableSheath;
  /** Outside diameter of one shielded conductor within an individually shielded cable. From 0.01 in to 60 in. */
  shielded_conductor_diameter?: Length;
  /** Make-up of the cable, for its bending radius. */
  shielding?: CableShielding;
  /** Temper or alloy of the metal. */
  temper?: ConductorTemper;
}

export const COMPACTION_VALUES = ["dumped", "slight", "moderate", "high"] as const;
/**
 * How an embedment is compacted: under 85, 85 to 95, over 95 percent of the standard Proctor density. Answers
 * may bring others.
 */
export type Compaction = (typeof COMPACTION_VALUES)[number] | (string & {});

/** A count of a run beside that of the base. */
export interface ComparedCount {
  /** The count of this run. */
  value: number;
  /** Less that of the base, where it differs. */
  difference?: number;
  /** The difference in percent of the base. */
  difference_percent?: number;
}

/** A finding that one of two runs has, by its pointer in that run. */
export interface ComparedFinding {
  /** What was found, in one stable word for programs. */
  code: string;
  /** The sentence for people. */
  message: string;
  /** Violation, caution or note. */
  severity: Severity;
  /** JSON pointer of the member it is about. */
  pointer?: string;
}

/** A length of a run beside that of the base. */
export interface ComparedLength {
  /** The length of this run. */
  length: Length;
  /** Less that of the base, where it differs. */
  difference?: Length;
  /** The difference in percent of the base. */
  difference_percent?: number;
}

/** One line of the takeoffs that is not the same in all runs. */
export interface ComparedLine {
  /** The item in words. */
  description: string;
  /** The part of the work it belongs to. */
  group: TakeoffGroup;
  /** What it is a line of. */
  item: TakeoffItem;
  /** Every run in order, the base first. */
  runs: LineOfRun[];
  /** Angle of an elbow or a field bend. */
  angle?: Angle;
  /** Type of the conduit. */
  conduit_type?: ConduitType;
  /** How a volume of earth is measured. */
  measure?: VolumeMeasure;
  /** Radius of an elbow or a field bend. */
  radius?: Length;
  /** Trade size, conductor size or bar size. */
  size?: string;
}

/** A figure of a run beside that of the base. */
export interface ComparedNumber {
  /** The number of this run. */
  value: number;
  /** Less that of the base, where it differs. */
  difference?: number;
  /** The difference in percent of the base. */
  difference_percent?: number;
}

/** A quantity of a takeoff beside that of the base. */
export interface ComparedQuantity {
  /** The quantity of this run. */
  quantity: TakeoffQuantity;
  /** Less that of the base, where it differs. */
  difference?: TakeoffQuantity;
  /** The difference in percent of the base. */
  difference_percent?: number;
}

/** One run: what it says of its limits, its place, its figures beside those of the base, its findings. */
export interface ComparedRun {
  /** Findings that the base has not. */
  findings_gained: ComparedFinding[];
  /** Findings that the base alone has. */
  findings_lost: ComparedFinding[];
  /** Length of a duct from end to end along its center line. */
  length: ComparedLength;
  /** Name of the run, as given. */
  name: string;
  /** Length in plan. */
  plan_length: ComparedLength;
  /** Pulls, one a duct of a circuit from stop to stop. */
  pull_count: ComparedCount;
  /** How many of the pulls were not judged. */
  unjudged_pull_count: number;
  /** How many limits it breaks. */
  violation_count: number;
  /**
   * The most that a pull uses of its limits from its better end, in percent; no difference where a pull was not
   * judged.
   */
  highest_utilization_percent?: ComparedNumber;
  /** What it takes of the item it is ranked by. */
  item_quantity?: ComparedQuantity;
  /** By the rates of the run; no difference where one has gaps. */
  labor_hours?: ComparedNumber;
  /** What the labor hours leave out, if rates are given. */
  labor_hours_gap?: string;
  /** Why it has no place: what gap its measure has. */
  not_ranked_because?: string;
  /** By the rates of the run; no difference where one has gaps. */
  price?: ComparedNumber;
  /** What the price leaves out, if rates are given. */
  price_gap?: string;
  /**
   * Its place from 1, if ranked: those that comply first, those that do not last, least first; alike figures
   * share a place.
   */
  rank?: number;
  /** What this run says of its limits. */
  verdict?: Verdict;
}

/** Concrete outside the ducts. */
export interface ConcreteCover {
  /** Below the bottom tier. From 0 in to 240 in. */
  bottom?: Length;
  /** Beside the widest tier, each side. From 0 in to 240 in. */
  side?: Length;
  /** Above the top tier. From 0 in to 240 in. */
  top?: Length;
}

/** The metal area of a conductor with its unit. */
export interface ConductorArea {
  /** The unit, by its code. */
  unit: ConductorAreaUnit;
  /** The number, in the unit. */
  value: number;
}

export const CONDUCTOR_AREA_UNIT_VALUES = ["mm2", "kcmil"] as const;
/** Units of the metal area of a conductor. */
export type ConductorAreaUnit = (typeof CONDUCTOR_AREA_UNIT_VALUES)[number];

export const CONDUCTOR_CHANGE_VALUES = ["one_more", "one_size_larger"] as const;
/** A small change of one line of cables. Answers may bring others. */
export type ConductorChange = (typeof CONDUCTOR_CHANGE_VALUES)[number] | (string & {});

/** The answer of conductor-count with everything that defends it. */
export interface ConductorCountAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: ConductorCountResult;
  /** The request with every default filled in, if asked for. */
  request?: ConductorCountRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of conductor_count. */
export interface ConductorCountItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: conductor count. */
  operation: "conductor_count";
  /** The body of `POST /v1/conductor-count`. */
  request: ConductorCountRequest;
}

/** An answer of conductor_count. */
export interface ConductorCountItemAnswer {
  /** The answer of `POST /v1/conductor-count`. */
  answer: ConductorCountAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: conductor count. */
  operation: "conductor_count";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** One cable, and the conduit to be filled with it. */
export interface ConductorCountRequest {
  /** The conductor or cable, all of one kind. */
  cable: Cable;
  /** The conduit. */
  conduit: Conduit;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /**
   * Length between the boxes if this is a nipple: up to 24 in it may be filled to 60 percent. From 0 ft to 1000
   * ft.
   */
  nipple_length?: Length;
  /**
   * Let 0.8 or more stand for one cable (last sentence of Note 7). Off unless asked: the sentence speaks of a
   * conductor, and a jacketed cable over 53 percent is often refused in the field. A single conductor of Tables
   * 5, 5A and 8 is always rounded, as the counts of Annex C are.
   */
  single_cable_rounding?: boolean;
}

/** How many may be in the conduit, and what decided. */
export interface ConductorCountResult {
  /** Area of one conductor. */
  conductor_area: Area;
  /** Inside area of the conduit, as printed if listed. */
  conduit_area: Area;
  /** Percentage of the unrounded conduit area over one conductor's. */
  exact_count: number;
  /** What maximum_count conductors fill, in percent of conduit area. */
  fill_percent: number;
  /** Percentage of the line of Table 1 that decided. */
  limit_percent: number;
  /** What the line of Table 1 that decided says, in a sentence. */
  limit_reason: string;
  /** Which line of Table 1 decided. */
  limit_rule: FillLimitRule;
  /** Most conductors that comply; 0 if not even one does. */
  maximum_count: number;
  /** Whether the count was rounded up, from 0.8 (Note 7). */
  rounding_decided: boolean;
}

/** An answer of conductor_count. */
export interface ConductorCountStreamAnswer {
  /** The answer of `POST /v1/conductor-count`. */
  answer: ConductorCountAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: conductor count. */
  operation: "conductor_count";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const CONDUCTOR_COUNTING_VALUES = ["all_counted", "two_of_three"] as const;
/** Published rules for how many conductors share the pull: all of three, or two of three single conductors. */
export type ConductorCounting = (typeof CONDUCTOR_COUNTING_VALUES)[number];

export const CONDUCTOR_MARKING_VALUES = ["THHN", "THWN", "THWN-2", "XHH", "XHHW", "XHHW-2", "ZW", "TW", "THW", "THHW", "THW-2", "RHH", "RHW", "RHW-2", "RHH*", "RHW*", "RHW-2*", "USE-2", "bare"] as const;
/** What the rows of the conductor table go by: markings of insulation, and bare. Answers may bring others. */
export type ConductorMarking = (typeof CONDUCTOR_MARKING_VALUES)[number] | (string & {});

export const CONDUCTOR_MATERIAL_VALUES = ["copper", "aluminum"] as const;
/** Metals of conductors. */
export type ConductorMaterial = (typeof CONDUCTOR_MATERIAL_VALUES)[number];

/** One size of one conductor of Chapter 9, Table 5, 5A or 8. */
export interface ConductorRow {
  /** Area over the insulation; of a bare conductor, its overall circle. */
  area: Area;
  /** Diameter over the insulation; of a bare conductor, its own. */
  diameter: Length;
  /** Markings the row serves; an asterisk: without covering. */
  insulations: ConductorMarking[];
  /** Size of the conductor. */
  size: ConductorSize;
  /** Id of the source; see /v1/tables/sources. */
  source_id: string;
  /** With what right it is given. */
  standing: Standing;
  /** Table of Chapter 9. */
  table: string;
  /** Remark on the row. */
  note?: string;
  /** Make-up, where the table tells. */
  stranding?: string;
}

export const CONDUCTOR_SIZE_VALUES = ["18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "3 AWG", "2 AWG", "1 AWG", "1/0 AWG", "2/0 AWG", "3/0 AWG", "4/0 AWG", "250 kcmil", "300 kcmil", "350 kcmil", "400 kcmil", "500 kcmil", "600 kcmil", "700 kcmil", "750 kcmil", "800 kcmil", "900 kcmil", "1000 kcmil", "1250 kcmil", "1500 kcmil", "1750 kcmil", "2000 kcmil"] as const;
/** Sizes of conductors. Answers may bring others. */
export type ConductorSize = (typeof CONDUCTOR_SIZE_VALUES)[number] | (string & {});

/** Conductor dimensions, with the hash of all tables. */
export interface ConductorTable {
  /** The rows, as the source has them. */
  rows: ConductorRow[];
  /** Hash of all reference tables. */
  tables_version: string;
}

export const CONDUCTOR_TEMPER_VALUES = ["soft", "half_hard", "three_quarter_hard", "hard", "aa_8000"] as const;
/** Tempers and alloys of conductors with a published pulling stress. */
export type ConductorTemper = (typeof CONDUCTOR_TEMPER_VALUES)[number];

/** A conduit: by type and trade size, or by its measures. */
export type Conduit =
  | ListedConduit
  | MeasuredConduit;

export const CONDUIT_MATERIAL_VALUES = ["pvc", "rtrc", "hdpe", "steel", "aluminum"] as const;
/** Materials of conduit with a coefficient of expansion on file. Answers may bring others. */
export type ConduitMaterial = (typeof CONDUIT_MATERIAL_VALUES)[number] | (string & {});

/** One trade size of one conduit type; utility duct has no inside diameter here. */
export interface ConduitRow {
  /** Metric designator; a label, not a dimension. */
  metric_designator: number;
  /** Id of the source; see /v1/tables/sources. */
  source_id: string;
  /** With what right it is given. */
  standing: Standing;
  /** Trade size. */
  trade_size: TradeSize;
  /** Type of the conduit. */
  type: ConduitType;
  /** Area of the bore. */
  area?: Area;
  /** Diameter of the bore. */
  inside_diameter?: Length;
  /** Least thickness of the wall. */
  minimum_wall?: Length;
  /** Remark on the row. */
  note?: string;
  /** Outside diameter, as printed. */
  outside_diameter?: Length;
  /** Source of outside diameter and wall. */
  wall_source_id?: string;
  /** Standing of outside diameter and wall. */
  wall_standing?: Standing;
}

/** The answer of conduit-size with everything that defends it. */
export interface ConduitSizeAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: ConduitSizeResult;
  /** The request with every default filled in, if asked for. */
  request?: ConduitSizeRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of conduit_size. */
export interface ConduitSizeItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: conduit size. */
  operation: "conduit_size";
  /** The body of `POST /v1/conduit-size`. */
  request: ConduitSizeRequest;
}

/** An answer of conduit_size. */
export interface ConduitSizeItemAnswer {
  /** The answer of `POST /v1/conduit-size`. */
  answer: ConduitSizeAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: conduit size. */
  operation: "conduit_size";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** What goes into a conduit whose size is asked for. */
export interface ConduitSizeRequest {
  /** Everything in the conduit, grounding and bonding conductors included. */
  cables: CableLine[];
  /** Type of conduit. */
  type: ConduitType;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /**
   * Length between the boxes if this is a nipple: up to 24 in it may be filled to 60 percent. From 0 ft to 1000
   * ft.
   */
  nipple_length?: Length;
  /**
   * Let 0.8 or more stand for one cable (last sentence of Note 7). Off unless asked: the sentence speaks of a
   * conductor, and a jacketed cable over 53 percent is often refused in the field. A single conductor of Tables
   * 5, 5A and 8 is always rounded, as the counts of Annex C are.
   */
  single_cable_rounding?: boolean;
  /** Share of the permitted area to leave free, in percent. */
  spare_percent?: number;
}

/** The smallest size that complies, its neighbors, and what small changes would do. */
export interface ConduitSizeResult {
  /** Every trade size of the type, smallest first. */
  candidates: SizeCandidate[];
  /** For every line: one conductor more, and one conductor size larger. */
  changes: SizeChange[];
  /** Their area together. */
  conductor_area: Area;
  /** Conductors and cables counted. */
  conductor_count: number;
  /** Percentage of Table 1 that applies. */
  limit_percent: number;
  /** Why that line applies, in a sentence. */
  limit_reason: string;
  /** Which line of Table 1 applies. */
  limit_rule: FillLimitRule;
  /** The next size up, if the type has one. */
  next_trade_size?: TradeSize;
  /** Smallest trade size that complies; absent if none does. */
  trade_size?: TradeSize;
}

/** An answer of conduit_size. */
export interface ConduitSizeStreamAnswer {
  /** The answer of `POST /v1/conduit-size`. */
  answer: ConduitSizeAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: conduit size. */
  operation: "conduit_size";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** Conduit and duct dimensions, with the hash of all tables. */
export interface ConduitTable {
  /** The rows, as the source has them. */
  rows: ConduitRow[];
  /** Hash of all reference tables. */
  tables_version: string;
}

export const CONDUIT_TYPE_VALUES = ["pvc_schedule_40", "pvc_schedule_80", "pvc_type_a", "pvc_type_eb", "pvc_db_60", "pvc_db_100", "pvc_db_120", "pvc_eb_20", "pvc_eb_35", "hdpe_schedule_40", "rtrc", "emt", "imc", "rmc", "ent", "fmc", "lfmc", "lfnc_a", "lfnc_b"] as const;
/**
 * Kinds of conduit and duct with a sourced table row; RTRC has rules, but no dimensions on file. Answers may
 * bring others.
 */
export type ConduitType = (typeof CONDUIT_TYPE_VALUES)[number] | (string & {});

export const CONDUIT_USE_VALUES = ["above_ground", "sunlight", "physical_damage", "direct_burial", "concrete_encasement", "directional_bore", "under_building", "hazardous_location", "emerging_from_grade", "within_building", "wet_location", "corrosive_influence", "cinder_fill", "plenum", "severe_physical_damage"] as const;
/** Places and ways conduit is used. Answers may bring others. */
export type ConduitUse = (typeof CONDUIT_USE_VALUES)[number] | (string & {});

export const COUPLING_VALUES = ["threaded", "threadless"] as const;
/** How lengths of rigid or intermediate metal conduit are coupled. */
export type Coupling = (typeof COUPLING_VALUES)[number];

/** The answer of cover with everything that defends it. */
export interface CoverAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: CoverResult;
  /** The request with every default filled in, if asked for. */
  request?: CoverRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of cover. */
export interface CoverItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: cover. */
  operation: "cover";
  /** The body of `POST /v1/cover`. */
  request: CoverRequest;
}

/** An answer of cover. */
export interface CoverItemAnswer {
  /** The answer of `POST /v1/cover`. */
  answer: CoverAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: cover. */
  operation: "cover";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** What is buried, and where. */
export interface CoverRequest {
  /** Where. */
  location: BurialLocation;
  /** Voltage between conductors. */
  voltage_class: VoltageClass;
  /** What is buried. */
  wiring_method: WiringMethod;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /**
   * Concrete of the envelope above the raceway, where it is encased: the rules measure through it. From 0 in to
   * 240 in.
   */
  concrete_above?: Length;
  /**
   * Least concrete of the envelope beside and below the raceway, where it is encased: one that is not listed for
   * direct burial needs it all round. From 0 in to 240 in.
   */
  concrete_around?: Length;
  /**
   * Cover as built or planned, held against the least: earth over the top of what is buried, the shortest way to
   * grade; that is its concrete where it is encased. From 0 in to 1200 in.
   */
  cover?: Length;
  /** Whether it is encased in concrete. */
  encased?: boolean;
  /** Whether a raceway is listed for direct burial without encasement. */
  listed_for_direct_burial?: boolean;
}

/** The least cover and how it is measured. */
export interface CoverResult {
  /** Concrete needed beside the cover; 0 for none. */
  concrete_required: Length;
  /** What the cover is measured between. */
  measured_from: string;
  /** Least cover, as printed. */
  minimum_cover: Length;
  /** Where the figure stands. */
  rule: string;
  /** As judged: the cover given, and the concrete between it and the raceway. */
  cover_over_raceway?: Length;
  /** By how much it exceeds the least; below 0 if it is too shallow. */
  margin?: Length;
}

/** An answer of cover. */
export interface CoverStreamAnswer {
  /** The answer of `POST /v1/cover`. */
  answer: CoverAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: cover. */
  operation: "cover";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const COVERING_MATERIAL_VALUES = ["rubber", "pvc", "pe", "xlpe", "epr", "paper"] as const;
/** What insulation and jackets are made of, for the heat that crosses them. */
export type CoveringMaterial = (typeof COVERING_MATERIAL_VALUES)[number];

/** An electric current with its unit. */
export interface Current {
  /** The unit, by its code. */
  unit: CurrentUnit;
  /** The number, in the unit. */
  value: number;
}

export const CURRENT_UNIT_VALUES = ["A", "kA"] as const;
/** Units of electric current. */
export type CurrentUnit = (typeof CURRENT_UNIT_VALUES)[number];

/** A mass per volume with its unit. */
export interface Density {
  /** The unit, by its code. */
  unit: DensityUnit;
  /** The number, in the unit. */
  value: number;
}

export const DENSITY_UNIT_VALUES = ["kg/m3", "lb/ft3", "lb/yd3"] as const;
/** Units of mass per volume. */
export type DensityUnit = (typeof DENSITY_UNIT_VALUES)[number];

/** How a trench is dug and filled. */
export interface Digging {
  /** Bedding under the bank. From 0 in to 1200 in. */
  bedding?: Length;
  /** Widths of the buckets at hand: the floor is as wide as the narrowest that digs the width wanted. */
  bucket_widths?: Length[];
  /** Compacted volume of one in the bank, in place of the soil's. */
  compacted_volume_factor?: number;
  /** What one truck hauls, loose. From 0.1 yd3 to 100 yd3. */
  haul_capacity?: Volume;
  /** Least width of the bottom where ducts are buried directly and width is left out. From 1 in to 1200 in. */
  least_width?: Length;
  /** Loose volume of one in the bank, in place of the soil's. */
  loose_volume_factor?: number;
  /** Clear distance to the nearest other utility. From 0 in to 1200 in. */
  nearest_utility?: Length;
  /** The pavement over the trench, if there is any. */
  pavement?: Pavement;
  /** Select fill over the bank, before native backfill. From 0 in to 1200 in. */
  select_fill?: Length;
  /** Side of the trench, horizontal for one vertical. */
  side_slope_ratio?: number;
  /** What is dug, for its volumes. */
  soil?: SoilKind;
  /** Soil type of the excavation rules, by the competent person. */
  soil_type?: ExcavationSoilType;
  /** Extra warning tape. */
  tape_overlap_percent?: number;
  /** Warning tape below grade; under a pavement that is thicker it lies right under that. From 0 in to 1200 in. */
  warning_tape_depth?: Length;
  /** Width of the bottom, in place of practice. From 1 in to 1200 in. */
  width?: Length;
  /**
   * Room beside the bank on each side, where width is left out and the trench is not the form. From 0 in to 240
   * in.
   */
  working_space?: Length;
}

/** In earth, without concrete. */
export interface DirectBuriedSetting {
  /** Fixed text that says: buried directly. */
  kind: "direct_buried";
  /**
   * Earth over the top of what is buried, its concrete where it is encased, the shortest way to grade; needed
   * without a profile. From 0 in to 1200 in.
   */
  cover?: Length;
  /** What lies above, for the least cover. */
  location?: BurialLocation;
  /** Whether spacers hold its ducts apart, where there are several; in concrete they always do. */
  on_spacers?: boolean;
}

/** Stations no more than a distance apart, ends included. */
export interface DistanceInterval {
  /** Greatest distance between stations. From 0.25 ft to 1000 ft. */
  distance: Length;
  /** Fixed text that says: by distance. */
  kind: "distance";
}

export const DRAINS_TO_VALUES = ["end", "both_ends"] as const;
/** Where ducts that fall drain to. */
export type DrainsTo = (typeof DRAINS_TO_VALUES)[number];

/** Ducts in tiers: of one kind (tiers), or of several (tier_ducts). */
export interface DuctBank {
  /** The duct; every one, but those of tier_ducts that have their own. */
  conduit: Conduit;
  /** How tiers of different width stand on each other. */
  alignment?: BankAlignment;
  /** Distance between ducts of a tier. From 0 in to 240 in. */
  horizontal_separation?: Length;
  /** Distance between a power and a signal duct. From 0 in to 240 in. */
  power_signal_separation?: Length;
  /** Whether the distances are clear or between centers. */
  separation_measure?: SeparationMeasure;
  /** How many ducts of each tier, the last ones, carry signals beside power. */
  signal_ducts?: number[];
  /**
   * In place of tiers, where ducts differ: those of each tier from left to right, the bottom tier first. The
   * ducts of a tier stand on one level.
   */
  tier_ducts?: DuctsBeside[][];
  /** Ducts in each tier, the bottom tier first. */
  tiers?: number[];
  /** Distance between tiers. From 0 in to 240 in. */
  vertical_separation?: Length;
}

export const DUCT_CONTENTS_VALUES = ["empty", "water", "cable"] as const;
/** Contents of ducts. */
export type DuctContents = (typeof DUCT_CONTENTS_VALUES)[number];

/** Elbows or sweeps of one kind in each duct. */
export interface DuctElbow {
  /** Angle. From 0.1 deg to 360 deg. */
  angle: Angle;
  /** How many in each duct. */
  count: number;
  /**
   * Radius to the center line; of PVC and metal that of the standard elbow of its size, if left out. From 0.5 in
   * to 120000 in.
   */
  radius?: Length;
  /** Straight part at either end. From 0 in to 240 in. */
  tangent?: Length;
}

export const DUCT_ENDS_VALUES = ["belled", "plain"] as const;
/** Whether sticks have a bell or two plain ends. */
export type DuctEnds = (typeof DUCT_ENDS_VALUES)[number];

/** One loaded duct: where it lies, how warm it is, and what its heat has to cross. */
export interface DuctHeat {
  /** From cables to duct, for all their heat. */
  air_resistance: ThermalResistance;
  /** Mean of cable and duct. */
  air_temperature: Temperature;
  /** At the surface of the cables. */
  cable_temperature: Temperature;
  /** Current in each of its loaded conductors. */
  conductor_current: Current;
  /** Heat of one conductor. */
  conductor_loss: PowerPerLength;
  /** Resistance of one conductor to the current, at its temperature. */
  conductor_resistance: ResistancePerLength;
  /** Temperature of its conductors. */
  conductor_temperature: Temperature;
  /** Depth of its center below grade. */
  depth: Length;
  /** Heat in one conductor's insulation. */
  dielectric_loss: PowerPerLength;
  /** Its name, as tier-position. */
  duct: string;
  /** At the outside of the duct. */
  duct_temperature: Temperature;
  /** Of what surrounds the duct, for the heat of this duct as its load goes. */
  earth_resistance: ThermalResistance;
  /** Heat of all cables in the duct. */
  heat: PowerPerLength;
  /** For the heat of one conductor. */
  insulation_resistance: ThermalResistance;
  /** For the heat of one cable. */
  jacket_resistance: ThermalResistance;
  /** Product over the other loaded ducts of image distance over distance; 1 of a single one. */
  mutual_heating_factor: number;
  /** What the other loaded ducts add. */
  mutual_rise: TemperatureDifference;
  /** What its circuit carries, in the request. */
  pointer: string;
  /** Heat in one conductor's shield. */
  shield_loss: PowerPerLength;
  /** Most that its conductors may reach. */
  temperature_limit: Temperature;
  /** Tier, from 1 at the bottom. */
  tier: number;
  /** Of the wall of the duct, for all heat. */
  wall_resistance: ThermalResistance;
  /** Distance of its center to the right of the left edge of the ducts. */
  x: Length;
}

export const DUCT_MATERIAL_VALUES = ["pvc", "hdpe", "rtrc", "steel", "aluminum"] as const;
/** What ducts are made of, as far as its density is on file. */
export type DuctMaterial = (typeof DUCT_MATERIAL_VALUES)[number];

/** The answer of duct-run with everything that defends it. */
export interface DuctRunAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: DuctRunResult;
  /** What would keep the limits it breaks, each tried, if asked for. */
  remedies?: Remedies;
  /** The request with every default filled in, if asked for. */
  request?: DuctRunRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** The answer of duct-run/compare with everything that defends it. */
export interface DuctRunComparisonAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: DuctRunComparisonResult;
  /** The request with every default filled in, if asked for. */
  request?: DuctRunComparisonRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of duct_run_compare. */
export interface DuctRunComparisonItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: duct run compare. */
  operation: "duct_run_compare";
  /** The body of `POST /v1/duct-run/compare`. */
  request: DuctRunComparisonRequest;
}

/** An answer of duct_run_compare. */
export interface DuctRunComparisonItemAnswer {
  /** The answer of `POST /v1/duct-run/compare`. */
  answer: DuctRunComparisonAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: duct run compare. */
  operation: "duct_run_compare";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** Whole runs to compare with the first of them. */
export interface DuctRunComparisonRequest {
  /** The runs; the first is the base that the others are held against. */
  runs: NamedRun[];
  /** What they are ranked by, least first; of an item what is ordered of it, else what is done. */
  rank_by?: RankMeasure;
}

/** Runs side by side; the first is the base. */
export interface DuctRunComparisonResult {
  /** Lines that are the same in all runs, and not shown. */
  alike_line_count: number;
  /** Lines of the takeoffs in which a run differs. */
  lines: ComparedLine[];
  /** The runs as they were given. */
  runs: ComparedRun[];
  /** What they are ranked by, as asked. */
  rank_by?: RankMeasure;
}

/** An answer of duct_run_compare. */
export interface DuctRunComparisonStreamAnswer {
  /** The answer of `POST /v1/duct-run/compare`. */
  answer: DuctRunComparisonAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: duct run compare. */
  operation: "duct_run_compare";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** A question of duct_run. */
export interface DuctRunItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: duct run. */
  operation: "duct_run";
  /** The body of `POST /v1/duct-run`. */
  request: DuctRunRequest;
}

/** An answer of duct_run. */
export interface DuctRunItemAnswer {
  /** The answer of `POST /v1/duct-run`. */
  answer: DuctRunAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: duct run. */
  operation: "duct_run";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** A run from end to end. */
export interface DuctRunRequest {
  /** What stands at the end. */
  end: RunPlace;
  /** What stands at the start. */
  start: RunPlace;
  /** The stretches in order. */
  stretches: Stretch[];
  /** The duct bank; needed unless every stretch has its own. */
  bank?: DuctBank;
  /** The circuits; ducts left over are spares. */
  circuits?: Circuit[];
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /** How concrete is mixed and bought. */
  concrete?: Encasing;
  /** How the trench is dug and filled. */
  digging?: Digging;
  /** Earth and traffic on all that is buried; without it they are not asked. */
  earth_load?: EarthLoading;
  /**
   * What ducts float in and how they are held down while concrete is poured; its lifts are those that press on
   * the ducts under earth_load too, where that has none.
   */
  flotation?: Floating;
  /** How ducts are joined. */
  joining?: RunJoining;
  /** How what lies above ground moves and is held. */
  movement?: RunMoving;
  /** Its name. */
  name?: string;
  /** A remark, told back as it is. */
  note?: string;
  /** How cable is ordered. */
  ordering?: CableOrder;
  /** Elevations of ground and line: they give every grade and cover, none is given then. */
  profile?: Profile;
  /** How cables are pulled. */
  pulling?: PullPractice;
  /** The caller's rates for what is taken off. */
  rates?: Rate[];
  /**
   * How circuits with a load are rated in the ground, and the one frequency of the run: their voltage drop is
   * reckoned at it too.
   */
  rating?: RatingPractice;
  /** The place. */
  site?: Site;
  /** How ducts are held apart. */
  spacing?: Spacing;
  /**
   * Where the lengths of straights end: at the bends, or, as dimensioned on a plan, at the intersections of
   * their tangents.
   */
  straight_lengths?: StraightLengths;
}

/** The run from end to end. */
export interface DuctRunResult {
  /** In the order given. */
  circuits: RunCircuit[];
  /** Ducts side by side and above each other. */
  duct_count: number;
  /** The ducts of the first stretch. */
  ducts: RunDuct[];
  /** Length of a duct from end to end along its center line. */
  length: Length;
  /** Length in plan. */
  plan_length: Length;
  /** Ducts in which no circuit lies. */
  spare_count: number;
  /** Ends and pull points in order. */
  stops: RunStop[];
  /** In order. */
  stretches: RunStretch[];
  /** What is ordered, dug and done. */
  takeoff: Takeoff;
  /** One mandrel for the whole run, if all its ducts take the same. */
  mandrel_diameter?: Length;
  /** What the request calls the run. */
  name?: string;
  /** The remark of the request. */
  note?: string;
}

/** An answer of duct_run. */
export interface DuctRunStreamAnswer {
  /** The answer of `POST /v1/duct-run`. */
  answer: DuctRunAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: duct run. */
  operation: "duct_run";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** Like ducts beside each other in a tier. */
export interface DuctsBeside {
  /** How many ducts. */
  count: number;
  /** The duct. */
  conduit?: Conduit;
}

/** A time with its unit. */
export interface Duration {
  /** The unit, by its code. */
  unit: DurationUnit;
  /** The number, in the unit. */
  value: number;
}

export const DURATION_UNIT_VALUES = ["s", "min", "h"] as const;
/** Units of time. */
export type DurationUnit = (typeof DURATION_UNIT_VALUES)[number];

/** The answer of earth-load with everything that defends it. */
export interface EarthLoadAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: EarthLoadResult;
  /** The request with every default filled in, if asked for. */
  request?: EarthLoadRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of earth_load. */
export interface EarthLoadItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: earth load. */
  operation: "earth_load";
  /** The body of `POST /v1/earth-load`. */
  request: EarthLoadRequest;
}

/** An answer of earth_load. */
export interface EarthLoadItemAnswer {
  /** The answer of `POST /v1/earth-load`. */
  answer: EarthLoadAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: earth load. */
  operation: "earth_load";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const EARTH_LOAD_METHOD_VALUES = ["prism", "trench"] as const;
/**
 * How earth loads a duct: by the prism above it, or arching on the walls of its trench. Answers may bring
 * others.
 */
export type EarthLoadMethod = (typeof EARTH_LOAD_METHOD_VALUES)[number] | (string & {});

/** Ducts in the ground, and what lies and passes over them. */
export interface EarthLoadRequest {
  /** Earth over the top of what is buried, which is its concrete where it is encased. From 0 in to 1200 in. */
  cover: Length;
  /** What passes over them: nothing, or the axle of H-20 and HS-20. */
  traffic: Traffic;
  /** Compression that the wall of a duct bears for the long term. From 10 psi to 100000 psi. */
  allowable_wall_stress?: Pressure;
  /** Fill that arches on the walls of the trench, where its width is given. */
  arching_soil?: ArchingSoil;
  /** The duct bank; give this or a conduit. */
  bank?: DuctBank;
  /** Angle over which the bedding supports a duct. From 0 deg to 180 deg. */
  bedding_angle?: Angle;
  /** Bedding constant of the deflection formula, in place of that of the angle. */
  bedding_constant_ratio?: number;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /** How it is compacted. */
  compaction?: Compaction;
  /** Concrete outside the ducts, where they are encased. */
  concrete_cover?: ConcreteCover;
  /** Density of the concrete, where the ducts are encased. From 20 lb/ft3 to 300 lb/ft3. */
  concrete_density?: Density;
  /** The duct, if it is one alone; give this or a bank. */
  conduit?: Conduit;
  /** Most deflection of the vertical diameter. */
  deflection_limit_percent?: number;
  /**
   * Density of what the ducts are made of, where duct_mass_per_length is left out. From 20 lb/ft3 to 300 lb/ft3.
   */
  duct_density?: Density;
  /** Mass of an empty duct, for flotation. From 0 lb/ft to 1000 lb/ft. */
  duct_mass_per_length?: MassPerLength;
  /** What ducts by their diameters and of no type are made of. */
  duct_material?: PlasticMaterial;
  /** How earth loads the ducts: the prism above them, or arching on the walls of the trench. */
  earth_load_method?: EarthLoadMethod;
  /** Soil around the ducts, in place of which its modulus may be given. */
  embedment?: Embedment;
  /** Whether it is encased in concrete. */
  encased?: boolean;
  /** What holds the ducts down, over the uplift of groundwater, at least. */
  flotation_safety_factor?: number;
  /** Groundwater below grade, at its highest. From 0 in to 1200 in. */
  groundwater_depth?: Length;
  /** By how much the deflection under the earth grows in the long term. */
  lag_factor?: number;
  /**
   * Depth of concrete that is liquid at once, where they are encased; the whole pour if left out. From 0.25 ft
   * to 1000 ft.
   */
  lift_height?: Length;
  /** How the load of a wheel is found at the depth of the ducts; the governing one is the largest. */
  live_load_method?: LiveLoadMethod;
  /** By how much the load of a tire print widens with the depth, for the AASHTO spread. */
  load_spread_ratio?: number;
  /** Modulus of elasticity of the ducts for the long term, for buckling. From 1000 psi to 1e+08 psi. */
  long_term_modulus?: Pressure;
  /** Modulus of elasticity of the ducts for a moment. From 1000 psi to 1e+08 psi. */
  modulus?: Pressure;
  /** Stiffness of the ducts at 5 percent deflection. From 1 psi to 1e+06 psi. */
  pipe_stiffness?: Pressure;
  /** Mass per volume of the earth below groundwater, for flotation. From 50 lb/ft3 to 200 lb/ft3. */
  saturated_soil_density?: Density;
  /** Mass of the earth over the ducts per volume. From 50 lb/ft3 to 200 lb/ft3. */
  soil_density?: Density;
  /** Modulus of soil reaction, in place of that of embedment and compaction. From 0 psi to 20000 psi. */
  soil_modulus?: Pressure;
  /** Width of the trench at the top of the ducts, for arching. From 1 in to 1200 in. */
  trench_width?: Length;
  /** Load of one wheel of the axle, under traffic. From 1 lbf to 500000 lbf. */
  wheel_load?: Force;
}

/** Ducts under earth and traffic; without tiers where no load was put on them. */
export interface EarthLoadResult {
  /** Ducts in earth by tier, the bottom first, each kind of a tier. */
  tiers: TierUnderLoad[];
  /** Encased ducts in wet concrete by tier, the bottom first, each kind of a tier. */
  tiers_in_pour: TierInPour[];
  /** The largest deflection of all tiers. */
  deflection_percent?: number;
  /** How earth was taken to load. */
  earth_load_method?: EarthLoadMethod;
  /** The high end of what the formula stands for there. */
  highest_deflection_percent?: number;
  /** Whether the empty ducts stay down in groundwater. */
  in_service?: InService;
  /** The low end of what the formula stands for there. */
  lowest_deflection_percent?: number;
  /** Modulus of soil reaction that was taken. */
  soil_modulus?: Pressure;
  /** What would comply, of ducts in earth. */
  would_comply?: WouldComply;
}

/** An answer of earth_load. */
export interface EarthLoadStreamAnswer {
  /** The answer of `POST /v1/earth-load`. */
  answer: EarthLoadAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: earth load. */
  operation: "earth_load";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** What lies and passes over ducts, how they are bedded, and the limits they are held against. */
export interface EarthLoading {
  /** What passes over them: nothing, or the axle of H-20 and HS-20. */
  traffic: Traffic;
  /** Compression that the wall of a duct bears for the long term. From 10 psi to 100000 psi. */
  allowable_wall_stress?: Pressure;
  /** Fill that arches on the walls of the trench, where its width is given. */
  arching_soil?: ArchingSoil;
  /** Angle over which the bedding supports a duct. From 0 deg to 180 deg. */
  bedding_angle?: Angle;
  /** Bedding constant of the deflection formula, in place of that of the angle. */
  bedding_constant_ratio?: number;
  /** How it is compacted. */
  compaction?: Compaction;
  /** Density of the concrete, where the ducts are encased. From 20 lb/ft3 to 300 lb/ft3. */
  concrete_density?: Density;
  /** Most deflection of the vertical diameter. */
  deflection_limit_percent?: number;
  /**
   * Density of what the ducts are made of, where duct_mass_per_length is left out. From 20 lb/ft3 to 300 lb/ft3.
   */
  duct_density?: Density;
  /** Mass of an empty duct, for flotation. From 0 lb/ft to 1000 lb/ft. */
  duct_mass_per_length?: MassPerLength;
  /** What ducts by their diameters and of no type are made of. */
  duct_material?: PlasticMaterial;
  /** How earth loads the ducts: the prism above them, or arching on the walls of the trench. */
  earth_load_method?: EarthLoadMethod;
  /** Soil around the ducts, in place of which its modulus may be given. */
  embedment?: Embedment;
  /** What holds the ducts down, over the uplift of groundwater, at least. */
  flotation_safety_factor?: number;
  /** By how much the deflection under the earth grows in the long term. */
  lag_factor?: number;
  /**
   * Depth of concrete that is liquid at once, where they are encased; the whole pour if left out. From 0.25 ft
   * to 1000 ft.
   */
  lift_height?: Length;
  /** How the load of a wheel is found at the depth of the ducts; the governing one is the largest. */
  live_load_method?: LiveLoadMethod;
  /** By how much the load of a tire print widens with the depth, for the AASHTO spread. */
  load_spread_ratio?: number;
  /** Modulus of elasticity of the ducts for the long term, for buckling. From 1000 psi to 1e+08 psi. */
  long_term_modulus?: Pressure;
  /** Modulus of elasticity of the ducts for a moment. From 1000 psi to 1e+08 psi. */
  modulus?: Pressure;
  /** Stiffness of the ducts at 5 percent deflection. From 1 psi to 1e+06 psi. */
  pipe_stiffness?: Pressure;
  /** Mass per volume of the earth below groundwater, for flotation. From 50 lb/ft3 to 200 lb/ft3. */
  saturated_soil_density?: Density;
  /** Mass of the earth over the ducts per volume. From 50 lb/ft3 to 200 lb/ft3. */
  soil_density?: Density;
  /** Modulus of soil reaction, in place of that of embedment and compaction. From 0 psi to 20000 psi. */
  soil_modulus?: Pressure;
  /** Width of the trench at the top of the ducts, for arching. From 1 in to 1200 in. */
  trench_width?: Length;
  /** Load of one wheel of the axle, under traffic. From 1 lbf to 500000 lbf. */
  wheel_load?: Force;
}

/** The earth a bank lies in, and the method it is rated by. */
export interface EarthRating {
  /** Thermal resistivity of the concrete. From 20 degC.cm/W to 1000 degC.cm/W. */
  concrete_thermal_resistivity?: ThermalResistivity;
  /** Temperature that the air in every duct is taken to have, as printed tables do. From 0 degC to 150 degC. */
  duct_air_temperature?: Temperature;
  /** What ducts without a type are made of, for their heat; of the others their type tells. */
  duct_material?: WallMaterial;
  /** Thermal resistivity of the duct walls. From 0 K.m/W to 50 K.m/W. */
  duct_thermal_resistivity?: ThermalResistivity;
  /** Temperature of the earth at that depth, away from the cables. From -20 degC to 70 degC. */
  earth_temperature?: Temperature;
  /** Thermal resistivity of the earth and the backfill. From 20 degC.cm/W to 1000 degC.cm/W. */
  earth_thermal_resistivity?: ThermalResistivity;
  /** Method; both gives the one that allows less, with the other beside it. */
  method?: AmpacityMethod;
}

/** Ground and line at one station. */
export interface ElevationPoint {
  /** Elevation of finished grade. From -100000 ft to 100000 ft. */
  ground: Length;
  /** Elevation of the line. From -100000 ft to 100000 ft. */
  line: Length;
  /** Distance in plan from the start of the run. From 0 ft to 1e+07 ft. */
  station: Length;
}

export const EMBEDMENT_VALUES = ["fine_grained_high_plasticity", "fine_grained", "mixed_grained", "coarse_grained", "crushed_rock"] as const;
/** Soils around a duct, by how they support it. */
export type Embedment = (typeof EMBEDMENT_VALUES)[number];

/** In concrete, in a trench. */
export interface EncasedSetting {
  /** Fixed text that says: encased in concrete. */
  kind: "encased";
  /** Concrete on every side of the ducts. */
  concrete_cover?: ConcreteCover;
  /**
   * Earth over the top of what is buried, its concrete where it is encased, the shortest way to grade; needed
   * without a profile. From 0 in to 1200 in.
   */
  cover?: Length;
  /** What lies above, for the least cover. */
  location?: BurialLocation;
  /** Whether the concrete is poured against forms or against the trench. */
  pour?: PourPractice;
  /** Whether a formed pour fills the bounding rectangle or steps with the tiers. */
  pour_shape?: PourShape;
}

/** The answer of encasement with everything that defends it. */
export interface EncasementAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: EncasementResult;
  /** The request with every default filled in, if asked for. */
  request?: EncasementRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of encasement. */
export interface EncasementItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: encasement. */
  operation: "encasement";
  /** The body of `POST /v1/encasement`. */
  request: EncasementRequest;
}

/** An answer of encasement. */
export interface EncasementItemAnswer {
  /** The answer of `POST /v1/encasement`. */
  answer: EncasementAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: encasement. */
  operation: "encasement";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** A length of duct bank in concrete. */
export interface EncasementRequest {
  /** The duct bank. */
  bank: DuctBank;
  /** Length of the pour, to the outside face of each manhole. From 0.01 ft to 100000 ft. */
  length: Length;
  /** Mass of one bag of pre-mix, for small pours. From 1 lb to 5000 lb. */
  bag_mass?: Mass;
  /** Bare conductors in the envelope, if any. */
  bank_ground?: BankGround;
  /** Cement in the mix. From 1 lb/ft3 to 100 lb/ft3. */
  cement_content?: Density;
  /** Concrete above, below and beside the ducts. */
  concrete_cover?: ConcreteCover;
  /** Density of fresh concrete. From 50 lb/ft3 to 300 lb/ft3. */
  concrete_density?: Density;
  /** Largest aggregate of the mix. From 0 in to 240 in. */
  maximum_aggregate_size?: Length;
  /** Step in which the plant sells. From 0.001 yd3 to 100 yd3. */
  order_increment?: Volume;
  /** Color in percent of the mass of cement, for a marked mix. */
  pigment_percent?: number;
  /** Whether the pour fills the bounding rectangle or steps with the tiers. */
  pour_shape?: PourShape;
  /** Bars in the envelope. */
  reinforcing?: Reinforcing;
  /** Side of the trench, horizontal for one vertical, when the trench is the form. */
  side_slope_ratio?: number;
  /**
   * Width of the trench where the concrete begins, when the trench is the form; left out for a formed pour. From
   * 1 in to 1200 in.
   */
  trench_width?: Length;
  /** What one truck brings. From 0.1 yd3 to 100 yd3. */
  truck_capacity?: Volume;
  /** Waste on the net volume, in percent. */
  waste_percent?: number;
}

/** Envelope, volumes and what to order. */
export interface EncasementResult {
  /** Bags of pre-mix for the net volume with waste. */
  bag_count: number;
  /** Mass of the net volume. */
  concrete_mass: Mass;
  /** What the ducts displace, by outside diameter. */
  duct_volume: Volume;
  /** Where every duct lies. */
  ducts: PlacedDuct[];
  /** Height of the concrete. */
  envelope_height: Length;
  /** Greatest width of the concrete; at its bottom in a sloped trench. */
  envelope_width: Length;
  /** Forms along the pour, without its ends; 0 against earth. */
  form_area: Area;
  /** Volume of the envelope. */
  gross_volume: Volume;
  /** Concrete in place, without waste. */
  net_volume: Volume;
  /** With waste, up to the next step the plant sells. */
  order_volume: Volume;
  /** Truck loads for the order. */
  truck_load_count: number;
  /** Bare conductors in the envelope, if asked for. */
  bank_ground_takeoff?: BankGroundTakeoff;
  /** Width of the concrete at its top, against the sides of a trench. */
  envelope_top_width?: Length;
  /** Of the fresh concrete at the foot of the forms, filled from above; none against earth. */
  form_pressure?: Pressure;
  /** Color for the mix, if asked for. */
  pigment_mass?: Mass;
  /** Bars, if asked for. */
  reinforcing_takeoff?: ReinforcingTakeoff;
}

/** An answer of encasement. */
export interface EncasementStreamAnswer {
  /** The answer of `POST /v1/encasement`. */
  answer: EncasementAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: encasement. */
  operation: "encasement";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** How concrete is mixed, reinforced and bought. */
export interface Encasing {
  /** Mass of one bag of pre-mix, for small pours. From 1 lb to 5000 lb. */
  bag_mass?: Mass;
  /** Bare conductors in the envelope, if any. */
  bank_ground?: BankGround;
  /** Cement in the mix. From 1 lb/ft3 to 100 lb/ft3. */
  cement_content?: Density;
  /** Density of fresh concrete. From 50 lb/ft3 to 300 lb/ft3. */
  concrete_density?: Density;
  /** Largest aggregate of the mix. From 0 in to 240 in. */
  maximum_aggregate_size?: Length;
  /** Step in which the plant sells. From 0.001 yd3 to 100 yd3. */
  order_increment?: Volume;
  /** Color in percent of the mass of cement, for a marked mix. */
  pigment_percent?: number;
  /** Bars in the envelope. */
  reinforcing?: Reinforcing;
  /** What one truck brings. From 0.1 yd3 to 100 yd3. */
  truck_capacity?: Volume;
  /** Waste on the net volume, in percent. */
  waste_percent?: number;
}

/** An energy with its unit. */
export interface Energy {
  /** The unit, by its code. */
  unit: EnergyUnit;
  /** The number, in the unit. */
  value: number;
}

export const ENERGY_UNIT_VALUES = ["kWh"] as const;
/** Units of energy. */
export type EnergyUnit = (typeof ENERGY_UNIT_VALUES)[number];

export const EXCAVATION_SOIL_TYPE_VALUES = ["stable_rock", "type_a", "type_b", "type_c", "unclassified"] as const;
/** Soil types of 29 CFR 1926 Subpart P. */
export type ExcavationSoilType = (typeof EXCAVATION_SOIL_TYPE_VALUES)[number];

/** Ducts that are there already: nothing is bought for them but cable, cord and proofing. */
export interface ExistingSetting {
  /** Fixed text that says: ducts that are there already. */
  kind: "existing";
}

/** The answer of expansion with everything that defends it. */
export interface ExpansionAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: ExpansionResult;
  /** The request with every default filled in, if asked for. */
  request?: ExpansionRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A coefficient of linear thermal expansion with its unit. */
export interface ExpansionCoefficient {
  /** The unit, by its code. */
  unit: ExpansionCoefficientUnit;
  /** The number, in the unit. */
  value: number;
}

export const EXPANSION_COEFFICIENT_UNIT_VALUES = ["1/degC", "1/degF"] as const;
/** Units of a coefficient of thermal expansion. */
export type ExpansionCoefficientUnit = (typeof EXPANSION_COEFFICIENT_UNIT_VALUES)[number];

/** A question of expansion. */
export interface ExpansionItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: expansion. */
  operation: "expansion";
  /** The body of `POST /v1/expansion`. */
  request: ExpansionRequest;
}

/** An answer of expansion. */
export interface ExpansionItemAnswer {
  /** The answer of `POST /v1/expansion`. */
  answer: ExpansionAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: expansion. */
  operation: "expansion";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** Straight runs between securely mounted items, and the temperatures they see. */
export interface ExpansionRequest {
  /** The temperatures of the conduit. */
  temperatures: Temperatures;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /** Coefficient of linear expansion; give this or the material. From 1e-07 1/degF to 0.001 1/degF. */
  coefficient?: ExpansionCoefficient;
  /** Whether a run crosses a joint of the structure. */
  crosses_structural_joint?: boolean;
  /** Whether a run comes up out of the ground. */
  emerges_from_grade?: boolean;
  /** Travel of one expansion fitting. From 0.25 in to 60 in. */
  fitting_travel?: Length;
  /**
   * Length of one straight run between boxes, elbows or other fixed points; this or straight_runs. From 0.01 ft
   * to 100000 ft.
   */
  length?: Length;
  /** Material of the conduit; give this or the coefficient. */
  material?: ConduitMaterial;
  /** Temperatures for which to give the opening, as a table the crew carries. */
  opening_temperatures?: Temperature[];
  /** How far to open the fittings. */
  piston_convention?: PistonConvention;
  /**
   * Length of the piston that stays in the barrel when the fitting is fully open, with its coupling. A fitting
   * fully open is as long as this and twice its travel. From 0 in to 12 in.
   */
  piston_engagement?: Length;
  /** Highest temperature of the air that the conduit is permitted or listed for. From 50 degF to 400 degF. */
  service_temperature?: Temperature;
  /** Where the runs lie. */
  setting?: RunSetting;
  /** Lengths of several straight runs, each judged on its own; this or length. */
  straight_runs?: Length[];
  /** Most of the travel of a fitting that its share of the movement may use. */
  usable_travel_percent?: number;
}

/** How far the runs move and what takes it up; runs held by the ground have no movement to show. */
export interface ExpansionResult {
  /** Coefficient of linear expansion that the runs move by. */
  coefficient: ExpansionCoefficient;
  /** Expansion fittings of all runs together. */
  fitting_count: number;
  /** Whether any run reaches what calls for a fitting. */
  fitting_required: boolean;
  /** Each straight run; none if they are buried or encased. */
  runs: RunMovement[];
  /** Highest less lowest temperature, sun allowance included. */
  temperature_difference: TemperatureDifference;
  /** How many fittings of each travel that is sold would be needed. */
  travel_options: TravelOption[];
  /** Length of run to each fitting, for one run that needs any. */
  fitting_spacing?: Length;
  /** At this difference the longest run needs a fitting; at less, none does. */
  largest_difference_without_fitting?: TemperatureDifference;
  /** Change of the run; of several, of the one that moves most. */
  length_change?: Length;
  /** At this length a fitting becomes required; shorter runs need none. */
  longest_run_without_fitting?: Length;
  /** Opening at the installation temperature, measured from fully closed, for one run. */
  piston_opening?: Length;
  /** Travel with which one fitting would do for the longest run, its usable share considered. */
  travel_needed?: Length;
}

/** An answer of expansion. */
export interface ExpansionStreamAnswer {
  /** The answer of `POST /v1/expansion`. */
  answer: ExpansionAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: expansion. */
  operation: "expansion";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** The fall of ducts that drain, below level ground. */
export interface Fall {
  /** How steeply the ducts fall. From 0 percent to 30 percent. */
  grade: Grade;
  /** Whether the ducts fall from one end to the other, or from the middle to both. */
  drains_to?: DrainsTo;
}

/** One fault of a request. */
export interface Fault {
  /**
   * Stable code, of request and query: missing, unknown_member, wrong_type, not_an_integer, not_allowed,
   * kind_missing, unknown_kind, out_of_range, too_few, too_many, too_short, too_long, control_character,
   * unknown_parameter, not_with_this_form, repeated, assumption_needed; or one of a calculation: all are listed
   * in docs/findings.md of the service.
   */
  code: string;
  /** What is wrong and what to do next. */
  message: string;
  /** The values or names that are taken; left out where a problem has told many already. */
  allowed_values?: string[];
  /** What would have been assumed, had it not been refused. */
  assumption?: RefusedAssumption;
  /** Most that is taken; what must be less is so in the message. */
  maximum?: AnyQuantity;
  /** Least that is taken; what must be more is so in the message. */
  minimum?: AnyQuantity;
  /** Name of the query parameter. */
  parameter?: string;
  /** JSON Pointer of the member, as a URI fragment. */
  pointer?: string;
  /** Value or name that was probably meant: what was sent was not taken for it. */
  suggestion?: string;
}

/** The answer of fill with everything that defends it. */
export interface FillAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: FillResult;
  /** The request with every default filled in, if asked for. */
  request?: FillRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of fill. */
export interface FillItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: fill. */
  operation: "fill";
  /** The body of `POST /v1/fill`. */
  request: FillRequest;
}

/** An answer of fill. */
export interface FillItemAnswer {
  /** The answer of `POST /v1/fill`. */
  answer: FillAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: fill. */
  operation: "fill";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const FILL_LIMIT_RULE_VALUES = ["one_conductor", "two_conductors", "over_two_conductors", "nipple"] as const;
/**
 * Which line of Chapter 9, Table 1 sets the limit: one by the number in the conduit, or that of a nipple.
 * Answers may bring others.
 */
export type FillLimitRule = (typeof FILL_LIMIT_RULE_VALUES)[number] | (string & {});

/** What goes into which conduit. */
export interface FillRequest {
  /** Everything in the conduit, grounding and bonding conductors included. */
  cables: CableLine[];
  /** The conduit. */
  conduit: Conduit;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /**
   * Length between the boxes if this is a nipple: up to 24 in it may be filled to 60 percent. From 0 ft to 1000
   * ft.
   */
  nipple_length?: Length;
  /**
   * Let 0.8 or more stand for one cable (last sentence of Note 7). Off unless asked: the sentence speaks of a
   * conductor, and a jacketed cable over 53 percent is often refused in the field. A single conductor of Tables
   * 5, 5A and 8 is always rounded, as the counts of Annex C are.
   */
  single_cable_rounding?: boolean;
}

/** How full the conduit is, and against which limit. */
export interface FillResult {
  /** Their area together. */
  conductor_area: Area;
  /** Conductors and cables counted. */
  conductor_count: number;
  /** Inside area of the conduit, as printed if listed. */
  conduit_area: Area;
  /** Conductor area in percent of conduit area. */
  fill_percent: number;
  /** Area this percentage allows, as printed if listed. */
  limit_area: Area;
  /** Percentage of Table 1 that applies. */
  limit_percent: number;
  /** Why that line applies, in a sentence. */
  limit_reason: string;
  /** Which line of Table 1 applies. */
  limit_rule: FillLimitRule;
  /** Whether it complies only by the 0.8 rule of Note 7. */
  rounding_decided: boolean;
  /** Limit area less conductor area; negative when over. */
  spare_area: Area;
  /** Conduit over cable diameter; for three conductors or cables only. */
  jam_ratio?: number;
  /** Conduit over cable diameter times 1.05, the handbook allowance for ovality in bends. */
  jam_ratio_with_ovality?: number;
  /** Smallest trade size of the same type that complies; listed only. */
  smallest_trade_size?: TradeSize;
}

/** An answer of fill. */
export interface FillStreamAnswer {
  /** The answer of `POST /v1/fill`. */
  answer: FillAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: fill. */
  operation: "fill";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/**
 * One sentence a foreman understands: what, how much, the limit, what to do; `pointer` is where in the request.
 * What the caller gave, and what is worked out, has no source id.
 */
export interface Finding {
  /** Where the rule or the limit stands. */
  citation: string;
  /** What was found, in one stable word for programs: all are listed in docs/findings.md of the service. */
  code: string;
  /** The sentence for people. */
  message: string;
  /** Violation, caution or note. */
  severity: Severity;
  /** With what right that is given. */
  standing: Standing;
  /** How much it is. */
  actual?: AnyQuantity;
  /** What it is held against. */
  limit?: AnyQuantity;
  /** JSON pointer of the member it is about. */
  pointer?: string;
  /** Id of the source in the table of sources. */
  source_id?: string;
}

/** The expansion fittings of a run, as `expansion` counts them: one in each of as many equal pieces. */
export interface Fittings {
  /** Expansion fittings of the run. */
  fitting_count: number;
  /** Travel of one expansion fitting. From 0.25 in to 60 in. */
  fitting_travel?: Length;
  /**
   * Length of the piston that stays in the barrel when the fitting is fully open, with its coupling. A fitting
   * fully open is as long as this and twice its travel. From 0 in to 12 in.
   */
  piston_engagement?: Length;
}

/** What a bank floats in, and how it is held down. */
export interface Floating {
  /** Mass of the cables in each duct, if they are in it. From 0 lb/ft to 1000 lb/ft. */
  cable_mass_per_length?: MassPerLength;
  /** Density of the concrete around ducts in groundwater, whose weight holds them. From 50 lb/ft3 to 300 lb/ft3. */
  concrete_density?: Density;
  /** What is in the ducts. */
  contents?: DuctContents;
  /**
   * Density of what the ducts are made of, where duct_mass_per_length is left out. From 20 lb/ft3 to 700 lb/ft3.
   */
  duct_density?: Density;
  /** Mass of an empty duct. From 0 lb/ft to 1000 lb/ft. */
  duct_mass_per_length?: MassPerLength;
  /** What ducts that are given by their diameters are made of; a listed one tells it by its type. */
  duct_material?: DuctMaterial;
  /** Density of the fluid. From 20 lb/ft3 to 300 lb/ft3. */
  fluid_density?: Density;
  /**
   * Depth of a pour that is liquid at once, wherever it starts; the whole pour if left out. From 0.25 ft to 1000
   * ft.
   */
  lift_height?: Length;
  /** What surrounds it. */
  medium?: FlotationMedium;
  /** Factor on the uplift. */
  safety_factor?: number;
  /**
   * Density of the earth over ducts in groundwater, full of water, with that water. From 50 lb/ft3 to 200
   * lb/ft3.
   */
  saturated_soil_density?: Density;
  /** Distance of the stations that hold the bank down. From 0.25 ft to 1000 ft. */
  station_spacing?: Length;
  /** What one tie-down holds; without it tie-downs are not counted. From 1 lbf to 1e+06 lbf. */
  tie_down_capacity?: Force;
}

/** The answer of flotation with everything that defends it. */
export interface FlotationAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: FlotationResult;
  /** The request with every default filled in, if asked for. */
  request?: FlotationRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of flotation. */
export interface FlotationItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: flotation. */
  operation: "flotation";
  /** The body of `POST /v1/flotation`. */
  request: FlotationRequest;
}

/** An answer of flotation. */
export interface FlotationItemAnswer {
  /** The answer of `POST /v1/flotation`. */
  answer: FlotationAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: flotation. */
  operation: "flotation";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const FLOTATION_MEDIUM_VALUES = ["concrete", "slurry", "groundwater"] as const;
/** What ducts would float in. */
export type FlotationMedium = (typeof FLOTATION_MEDIUM_VALUES)[number];

/** A bank in a fluid. */
export interface FlotationRequest {
  /** The duct bank. */
  bank: DuctBank;
  /** Mass of the cables in each duct, if they are in it. From 0 lb/ft to 1000 lb/ft. */
  cable_mass_per_length?: MassPerLength;
  /** In groundwater: the hardened concrete around the ducts, whose weight holds them; left out, none is counted. */
  concrete_cover?: ConcreteCover;
  /** Density of the concrete around ducts in groundwater, whose weight holds them. From 50 lb/ft3 to 300 lb/ft3. */
  concrete_density?: Density;
  /** What is in the ducts. */
  contents?: DuctContents;
  /**
   * In groundwater: least earth over the top of what is buried, whose weight holds it; left out, none is
   * counted. From 0 in to 1200 in.
   */
  cover?: Length;
  /**
   * Density of what the ducts are made of, where duct_mass_per_length is left out. From 20 lb/ft3 to 700 lb/ft3.
   */
  duct_density?: Density;
  /** Mass of an empty duct. From 0 lb/ft to 1000 lb/ft. */
  duct_mass_per_length?: MassPerLength;
  /** What ducts that are given by their diameters are made of; a listed one tells it by its type. */
  duct_material?: DuctMaterial;
  /** Density of the fluid. From 20 lb/ft3 to 300 lb/ft3. */
  fluid_density?: Density;
  /** Length of the run, to count all tie-downs. From 0.01 ft to 100000 ft. */
  length?: Length;
  /**
   * Depth of a pour that is liquid at once, wherever it starts; the whole pour if left out. From 0.25 ft to 1000
   * ft.
   */
  lift_height?: Length;
  /** What surrounds it. */
  medium?: FlotationMedium;
  /** Whether that concrete fills the bounding rectangle or steps with the tiers. */
  pour_shape?: PourShape;
  /** Factor on the uplift. */
  safety_factor?: number;
  /**
   * Density of the earth over ducts in groundwater, full of water, with that water. From 50 lb/ft3 to 200
   * lb/ft3.
   */
  saturated_soil_density?: Density;
  /** Distance of the stations that hold the bank down. From 0.25 ft to 1000 ft. */
  station_spacing?: Length;
  /** What one tie-down holds; without it tie-downs are not counted. From 1 lbf to 1e+06 lbf. */
  tie_down_capacity?: Force;
}

/** The uplift and what holds it. */
export interface FlotationResult {
  /** Of all ducts, with the whole depth liquid at once. */
  full_uplift_per_length: ForcePerLength;
  /** On one station: the uplift of the ducts with the safety factor, less the weight. */
  hold_down_per_station: Force;
  /** Each kind of duct of each tier, the bottom tier first. */
  tier_uplifts: TierUplift[];
  /** Of the ducts in the worst live lift, less the weight that lies on them; 0 if none floats. */
  uplift_per_length: ForcePerLength;
  /** On one station. */
  uplift_per_station: Force;
  /** Of the concrete around the ducts, weighed in the groundwater, if it is given. */
  concrete_weight_per_length?: ForcePerLength;
  /** Of the earth above, weighed in the groundwater, if its cover is given. */
  earth_weight_per_length?: ForcePerLength;
  /** Tie-downs at each station, if the capacity of one is given. */
  tie_down_count?: number;
  /** Tie-downs of the run, if its length is given as well. */
  total_tie_down_count?: number;
}

/** An answer of flotation. */
export interface FlotationStreamAnswer {
  /** The answer of `POST /v1/flotation`. */
  answer: FlotationAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: flotation. */
  operation: "flotation";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** A force with its unit; tension is a force. */
export interface Force {
  /** The unit, by its code. */
  unit: ForceUnit;
  /** The number, in the unit. */
  value: number;
}

/** A force per length with its unit; sidewall pressure is one. */
export interface ForcePerLength {
  /** The unit, by its code. */
  unit: ForcePerLengthUnit;
  /** The number, in the unit. */
  value: number;
}

export const FORCE_PER_LENGTH_UNIT_VALUES = ["N/m", "kN/m", "lbf/ft"] as const;
/** Units of force per length. */
export type ForcePerLengthUnit = (typeof FORCE_PER_LENGTH_UNIT_VALUES)[number];

export const FORCE_UNIT_VALUES = ["N", "kN", "lbf", "kgf"] as const;
/** Units of force. */
export type ForceUnit = (typeof FORCE_UNIT_VALUES)[number];

/** A frequency with its unit. */
export interface Frequency {
  /** The unit, by its code. */
  unit: FrequencyUnit;
  /** The number, in the unit. */
  value: number;
}

export const FREQUENCY_UNIT_VALUES = ["Hz"] as const;
/** Units of frequency. */
export type FrequencyUnit = (typeof FREQUENCY_UNIT_VALUES)[number];

/** The pull at one coefficient of friction, from both ends. */
export interface FrictionCase {
  /** The coefficient of friction. */
  friction_coefficient: number;
  /** Tension at the pulling end, pulled from the other end. */
  reversed_tension: Force;
  /** The largest share of the limits that is used, pulled from the other end. */
  reversed_utilization_percent: number;
  /** Whether the pull from the other end keeps its limits, or was not judged. */
  reversed_verdict: Verdict;
  /** Tension at the pulling end. */
  tension: Force;
  /** The largest share of the limits that is used. */
  utilization_percent: number;
  /** Whether the pull keeps its limits, or was not judged. */
  verdict: Verdict;
  /** Force with which the reel must hold back, if it must. */
  brake_tension?: Force;
  /** Force with which the reel must hold back, pulled from the other end, if it must. */
  reversed_brake_tension?: Force;
  /** Highest sidewall pressure, if there is a bend. */
  sidewall_pressure?: ForcePerLength;
}

/** A low and a high coefficient of friction beside the expected one. */
export interface FrictionRange {
  /** High coefficient, dry. */
  high: number;
  /** Low coefficient, lubricated. */
  low: number;
}

/** A published range of the coefficient of friction of a cable jacket against a conduit. */
export interface FrictionRow {
  /** Conduit, as the source names it. */
  conduit: string;
  /** Upper end of the range. */
  high_coefficient: number;
  /** Jacket of the cable, as the source names it. */
  jacket: string;
  /** Lower end of the range. */
  low_coefficient: number;
  /** How the cable was lubricated. */
  lubrication: string;
  /** Id of the source; see /v1/tables/sources. */
  source_id: string;
  /** With what right it is given. */
  standing: Standing;
  /** Remark on the row. */
  note?: string;
}

/** Friction coefficients, with the hash of all tables. */
export interface FrictionTable {
  /** The rows, as the source has them. */
  rows: FrictionRow[];
  /** Hash of all reference tables. */
  tables_version: string;
}

/** A grade with its unit; positive climbs in the direction of travel. */
export interface Grade {
  /** The unit, by its code. */
  unit: GradeUnit;
  /** The number, in the unit. */
  value: number;
}

export const GRADE_UNIT_VALUES = ["deg", "percent"] as const;
/** Units of a grade: an angle from level, or the rise in percent of the level distance. */
export type GradeUnit = (typeof GRADE_UNIT_VALUES)[number];

/** The least equipment grounding conductor in every duct of a circuit. */
export interface GroundingSize {
  /** Least size in aluminum. */
  aluminum: ConductorSize;
  /** Least size in copper. */
  copper: ConductorSize;
}

/** Cable that is supported over a rise. */
export interface HangingCable {
  /** The sections it goes through. */
  place: string;
  /** How high it hangs. */
  rise: Length;
  /** Supports in one duct: at the top of the rise, and below it. */
  support_count: number;
  /** From the top down, the most between two of them. */
  support_spacing: Length;
}

/** A bend in a level plane; an offset is two bends. */
export interface HorizontalBendSection {
  /** Change of direction. From 0.1 deg to 360 deg. */
  angle: Angle;
  /** Fixed text that says: a bend in a level plane. */
  kind: "horizontal_bend";
  /** Radius to the center line. From 0.5 in to 120000 in. */
  radius: Length;
  /** Conduit of this section, where it differs. */
  conduit?: Conduit;
  /** Coefficient of friction of this section, where it differs. */
  friction_coefficient?: number;
  /** Whether it is bought or bent on site. */
  made?: BendMade;
}

/** Empty ducts in groundwater. */
export interface InService {
  /** Weight of earth, ducts and concrete that holds the ducts down. */
  hold_down_per_length: ForcePerLength;
  /** Lift of the groundwater on what lies below its level. */
  uplift_per_length: ForcePerLength;
  /** Whether the ducts stay down with the factor asked. */
  verdict: Verdict;
  /**
   * hold_down_per_length over uplift_per_length, the least of any bare ducts that lie over each other; absent
   * where nothing lifts.
   */
  safety_factor?: number;
}

export const INSULATION_VALUES = ["THHN", "THWN", "THWN-2", "XHH", "XHHW", "XHHW-2", "ZW", "TW", "THW", "THHW", "THW-2", "RHH", "RHW", "RHW-2", "RHH*", "RHW*", "RHW-2*", "USE-2"] as const;
/** Insulation as marked on the conductor; an asterisk, as in Table 5, means without an outer covering. */
export type Insulation = (typeof INSULATION_VALUES)[number];

/** The answer to one question of a batch. */
export type ItemAnswer =
  | AmpacityItemAnswer
  | ConductorCountItemAnswer
  | ConduitSizeItemAnswer
  | CoverItemAnswer
  | DuctRunItemAnswer
  | DuctRunComparisonItemAnswer
  | EarthLoadItemAnswer
  | EncasementItemAnswer
  | ExpansionItemAnswer
  | FillItemAnswer
  | FlotationItemAnswer
  | JointsItemAnswer
  | PermittedUseItemAnswer
  | PullBoxItemAnswer
  | PullPlanItemAnswer
  | PullTensionItemAnswer
  | SpacersItemAnswer
  | SupportsItemAnswer
  | TrenchItemAnswer
  | VoltageDropItemAnswer;

/** A question of a batch that has no answer. */
export interface ItemProblem {
  /** The problem; its pointers start at the item. */
  problem: Problem;
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: problem. */
  type: "problem";
  /** Id of the question; left out if it had none that could be read. */
  id?: string;
  /** The calculation asked for; left out if it could not be read. */
  operation?: OperationName;
}

export const JOINING_METHOD_VALUES = ["cemented", "fused", "threaded", "coupled"] as const;
/**
 * How lengths of a conduit are joined: by solvent cement, fused, threaded, or by couplings set on. Answers may
 * bring others.
 */
export type JoiningMethod = (typeof JOINING_METHOD_VALUES)[number] | (string & {});

/** A joint of the structure, and the expansion fitting that each duct has over it. */
export interface JointFitting {
  /** Travel of the fitting. */
  fitting_travel: Length;
  /** By how much the joint opens and closes in all. */
  movement: Length;
  /** How far to open it by the temperature of the structure, from the lowest on; without a range, none. */
  piston_openings: PistonOpening[];
  /** Where it is, from the start of the stretch. */
  position: Length;
}

/** The answer of joints with everything that defends it. */
export interface JointsAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: JointsResult;
  /** The request with every default filled in, if asked for. */
  request?: JointsRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of joints. */
export interface JointsItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: joints. */
  operation: "joints";
  /** The body of `POST /v1/joints`. */
  request: JointsRequest;
}

/** An answer of joints. */
export interface JointsItemAnswer {
  /** The answer of `POST /v1/joints`. */
  answer: JointsAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: joints. */
  operation: "joints";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** Ducts along a run. */
export interface JointsRequest {
  /** The duct. */
  conduit: ListedConduit;
  /** Ducts of the run. */
  duct_count: number;
  /** Length of one duct along its center line, elbows included. From 0.01 ft to 100000 ft. */
  length: Length;
  /** What a joint takes of a stick's length. From 0 in to 240 in. */
  bell_loss?: Length;
  /** Solvent cement that a cemented joint takes. From 1e-05 qt_us to 4 qt_us. */
  cement_per_joint?: Volume;
  /** Pull cord left at each end of a duct. From 0 in to 240 in. */
  cord_tail?: Length;
  /** Elbows and sweeps of each duct. */
  elbows?: DuctElbow[];
  /** How it finishes at the end. */
  end?: RunEnd;
  /** Bells or plain ends of the sticks; only what is cemented has bells. */
  ends?: DuctEnds;
  /** How much smaller than the bore the mandrel is. From 0 in to 240 in. */
  mandrel_clearance?: Length;
  /** Whether the offcut of one duct starts the next. */
  offcuts_shared?: boolean;
  /** Ducts that stay empty, plugged at both ends. */
  spare_duct_count?: number;
  /**
   * How each duct finishes at the start: with an end bell, a coupling or an adapter that is ordered here, at an
   * elbow of the run beside it with the coupling that plain ends take, in a conduit body, or with nothing, where
   * the run beside it counts the joint.
   */
  start?: RunEnd;
  /** Length a stick is sold by. From 0.25 ft to 1000 ft. */
  stick_length?: Length;
  /** Temperature when joining. From -100 degF to 400 degF. */
  temperature?: Temperature;
  /** Sticks to order beyond those laid. */
  waste_percent?: number;
}

/** What to order and how long to wait. */
export interface JointsResult {
  /** Terminal adapters. */
  adapter_count: number;
  /** Couplings, with those at elbows of a run beside; none with bells. */
  coupling_count: number;
  /** Elbows and sweeps of all ducts. */
  elbow_count: number;
  /** Developed length of the elbows of one duct. */
  elbow_length: Length;
  /** End bells. */
  end_bell_count: number;
  /** Joints of all ducts with those of their ends; of cemented ones each socket. */
  joint_count: number;
  /** How lengths of this conduit are joined. */
  method: JoiningMethod;
  /** Couplings to order: without those that come on lengths of threaded conduit, one on each. */
  order_coupling_count: number;
  /** Sticks of all ducts with waste, in whole sticks. */
  order_stick_count: number;
  /** Plugs for spare ducts, two each. */
  plug_count: number;
  /** Cord through every duct, tails included. */
  pull_cord_length: Length;
  /** Sticks of all ducts. */
  stick_count: number;
  /** Straight duct in one duct, elbows taken out. */
  straight_length: Length;
  /** Solvent cement to order, in whole US quarts. */
  cement_order_volume?: Volume;
  /** Solvent cement of cemented joints. */
  cement_volume?: Volume;
  /** Mandrel for the test, if the bore is known. */
  mandrel_diameter?: Length;
  /** Initial set of a cemented joint, before it is handled. */
  set_time?: Duration;
}

/** An answer of joints. */
export interface JointsStreamAnswer {
  /** The answer of `POST /v1/joints`. */
  answer: JointsAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: joints. */
  operation: "joints";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** One use. */
export interface JudgedUse {
  /** Where that stands, or that it is from memory. */
  citation: string;
  /** The use asked about. */
  use: ConduitUse;
  /** Permitted, not, or not judged: permitted under a condition that was not looked at. */
  verdict: Verdict;
  /** What it hangs on where it is not judged, if that is on file. */
  condition?: string;
}

/** The largest values with which the pull as given would still comply; absent where none does. */
export interface LargestComplying {
  /** Highest coefficient of friction, up to 2; absent if none complies. */
  friction_coefficient?: number;
  /** Largest tension at the entry; absent if none complies. */
  incoming_tension?: Force;
  /**
   * Longest last straight: the last section if it is one, else one at the grade of its end that could follow.
   * Absent if the pull before it does not comply, or if no length is too long.
   */
  last_straight?: Length;
}

/** The least of a dimension, inside, and what decided it. */
export interface LeastDimension {
  /** Where it stands. */
  citation: string;
  /** The least. */
  least: Length;
  /** JSON pointers of the entries that decided it; none where no entry did. */
  pointers: string[];
  /** The rule that decided it. */
  rule: BoxRule;
}

/** A length with its unit. */
export interface Length {
  /** The unit, by its code. */
  unit: LengthUnit;
  /** The number, in the unit. */
  value: number;
}

export const LENGTH_UNIT_VALUES = ["mm", "cm", "m", "in", "ft", "yd"] as const;
/** Units of length. */
export type LengthUnit = (typeof LENGTH_UNIT_VALUES)[number];

/** What one run takes of a line, beside the base. */
export interface LineOfRun {
  /** What is laid, dug or done, without waste. */
  exact_quantity: ComparedQuantity;
  /** Name of the run. */
  run: string;
  /** By the rates of the run. */
  labor_hours?: ComparedNumber;
  /** What is ordered, if it is. */
  order_quantity?: ComparedQuantity;
  /** Of the order, by the rates of the run. */
  price?: ComparedNumber;
}

/** Insulated building wire by marking and size, from Chapter 9, Table 5. */
export interface ListedCable {
  /** Insulation as marked; an asterisk means without an outer covering. */
  insulation: Insulation;
  /** Fixed text that says: by insulation and size. */
  kind: "listed";
  /** Conductor size. */
  size: ConductorSize;
  /** Pull per metal area that the conductor bears, in place of the published one. From 1 MPa to 1000 MPa. */
  allowable_stress?: Pressure;
  /**
   * Least bending radius of the cable's maker, to the inner wall, in place of the code's. From 0.5 in to 120000
   * in.
   */
  bending_radius?: Length;
  /** Kind of cable, for its sidewall pressure. */
  cable_type?: CableType;
  /** What slides on the conduit, for its published friction. */
  jacket?: CableJacket;
  /**
   * Mass per length of one cable; of building wire it is derived from metal and insulation. From 0.0001 lb/ft to
   * 1000 lb/ft.
   */
  mass_per_length?: MassPerLength;
  /** Metal of the conductor, for its mass and for what it bears. */
  material?: ConductorMaterial;
  /** What a basket grip would hold. */
  sheath?: CableSheath;
  /** Outside diameter of one shielded conductor within an individually shielded cable. From 0.01 in to 60 in. */
  shielded_conductor_diameter?: Length;
  /** Make-up of the cable, for its bending radius. */
  shielding?: CableShielding;
  /** Temper or alloy of the metal. */
  temper?: ConductorTemper;
}

/** A conduit or duct by its type and trade size; its diameters come from the tables. */
export interface ListedConduit {
  /** Fixed text that says: by type and trade size. */
  kind: "listed";
  /** Trade size, as the trade writes it. */
  trade_size: TradeSize;
  /** Type of conduit or duct. */
  type: ConduitType;
}

/** Pull points may stand at given places only. */
export interface ListedPositions {
  /** Fixed text that says: at these places. */
  kind: "listed";
  /** Distances along the center line from the start of the route, each on a straight. */
  positions: Length[];
}

/** The pressure of traffic on top of a duct by one method, its impact included. */
export interface LiveLoadByMethod {
  /** The method. */
  method: LiveLoadMethod;
  /** On top of the duct. */
  pressure: Pressure;
}

export const LIVE_LOAD_METHOD_VALUES = ["governing", "handbook_table", "aashto_spread", "boussinesq"] as const;
/**
 * How the load of a wheel is found at a depth; the governing one is the largest of those that go so shallow.
 * Answers may bring others.
 */
export type LiveLoadMethod = (typeof LIVE_LOAD_METHOD_VALUES)[number] | (string & {});

/** A circuit in ducts of the bank. */
export interface LoadedCircuit {
  /** The cables in each of its ducts, grounding conductors included. */
  cables: CableLine[];
  /** Its ducts, as tier-position: tier 1 at the bottom, position 1 at the left. */
  ducts: string[];
  /**
   * Current of the circuit, all its sets together; without it the answer says what it may be. From 0.001 A to 20
   * kA.
   */
  current?: Current;
  /** Mean load of a day in percent of its peak. */
  load_factor_percent?: number;
  /**
   * Conductors in each duct that carry the current, neutrals that count included; other neutrals and grounds
   * carry none here.
   */
  loaded_conductor_count?: number;
  /**
   * Of the loaded conductors in each duct, those that are neutrals, where loads have harmonics: each is as large
   * as the phases, and is taken to carry as much.
   */
  loaded_neutral_count?: number;
  /** What it is called. */
  name?: string;
  /** Rating of the overcurrent device ahead, for the least grounding conductor. From 1 A to 6 kA. */
  overcurrent_device?: Current;
  /** Where the shields are grounded, if the cables have any. */
  shield_grounding?: ShieldGrounding;
  /** Kind of circuit: three conductors make a set, or two. */
  system?: CircuitSystem;
  /** Highest temperature of the conductor. From 0 degC to 250 degC. */
  temperature_limit?: Temperature;
  /**
   * Temperature that the terminals at both ends are marked for; unmarked ones are taken for 60 degC to 100 A of
   * overcurrent_device or, without one, of current, and for 75 degC above; where neither is given, for 60 degC
   * to 1 AWG.
   */
  terminal_rating?: TerminalRating;
  /**
   * Between lines; to ground of a single phase. For the loss in insulation, and what the code allows. From 1 V
   * to 500 kV.
   */
  voltage?: Voltage;
}

/** A mass with its unit; a force is not a mass: see Force. */
export interface Mass {
  /** The unit, by its code. */
  unit: MassUnit;
  /** The number, in the unit. */
  value: number;
}

/** A mass per length with its unit. */
export interface MassPerLength {
  /** The unit, by its code. */
  unit: MassPerLengthUnit;
  /** The number, in the unit. */
  value: number;
}

export const MASS_PER_LENGTH_UNIT_VALUES = ["kg/m", "kg/km", "lb/ft", "lb/1000ft"] as const;
/** Units of mass per length. */
export type MassPerLengthUnit = (typeof MASS_PER_LENGTH_UNIT_VALUES)[number];

export const MASS_UNIT_VALUES = ["kg", "t", "lb", "short_ton"] as const;
/** Units of mass. */
export type MassUnit = (typeof MASS_UNIT_VALUES)[number];

/** Coefficient of linear expansion of one conduit material. */
export interface MaterialRow {
  /** Coefficient of linear expansion. */
  coefficient: ExpansionCoefficient;
  /** Material of the conduit. */
  material: ConduitMaterial;
  /** Id of the source; see /v1/tables/sources. */
  source_id: string;
  /** With what right it is given. */
  standing: Standing;
  /** Remark on the row. */
  note?: string;
}

/** Expansion coefficients, with the hash of all tables. */
export interface MaterialTable {
  /** The rows, as the source has them. */
  rows: MaterialRow[];
  /** Hash of all reference tables. */
  tables_version: string;
}

/** A single conductor or single-conductor cable by its diameter (Chapter 9, Table 1, Note 5). */
export interface MeasuredCable {
  /** Outside diameter. From 0.01 in to 60 in. */
  diameter: Length;
  /** Fixed text that says: a single conductor by diameter. */
  kind: "measured";
  /**
   * Least bending radius of the cable's maker, to the inner wall, in place of the code's. From 0.5 in to 120000
   * in.
   */
  bending_radius?: Length;
  /** Kind of cable, for its sidewall pressure. */
  cable_type?: CableType;
  /** What the pulling eye holds and the current flows in; without it the tension is not judged. */
  conductor?: CableConductor;
  /** What slides on the conduit, for its published friction. */
  jacket?: CableJacket;
  /** What lies around it, for its ampacity. */
  layers?: CableLayers;
  /**
   * Mass per length of one cable; of building wire it is derived from metal and insulation. From 0.0001 lb/ft to
   * 1000 lb/ft.
   */
  mass_per_length?: MassPerLength;
  /** What a basket grip would hold. */
  sheath?: CableSheath;
  /** Outside diameter of one shielded conductor within an individually shielded cable. From 0.01 in to 60 in. */
  shielded_conductor_diameter?: Length;
  /** Make-up of the cable, for its bending radius. */
  shielding?: CableShielding;
}

/** A conduit or duct by its diameters, for one that no table lists; take them from its maker. */
export interface MeasuredConduit {
  /** Inside diameter. From 0.01 in to 60 in. */
  inside_diameter: Length;
  /** Fixed text that says: by diameters. */
  kind: "measured";
  /**
   * Outside diameter; needed where the duct takes room: in a bank, in concrete, in a trench. From 0.01 in to 60
   * in.
   */
  outside_diameter?: Length;
  /** Trade size, for what is ordered and bent by it. */
  trade_size?: TradeSize;
  /** Type of conduit or duct, for the rules that hang on it; its diameters stay those given. */
  type?: ConduitType;
}

/** A multiconductor cable or cord by its diameter: it counts as one (Chapter 9, Table 1, Note 9). */
export interface MulticonductorCable {
  /** Outside diameter, the larger one if elliptical. From 0.01 in to 60 in. */
  diameter: Length;
  /** Fixed text that says: conductors in an overall jacket. */
  kind: "multiconductor";
  /**
   * Least bending radius of the cable's maker, to the inner wall, in place of the code's. From 0.5 in to 120000
   * in.
   */
  bending_radius?: Length;
  /** Kind of cable, for its sidewall pressure. */
  cable_type?: CableType;
  /** What the pulling eye holds and the current flows in; without it the tension is not judged. */
  conductor?: CableConductor;
  /** What slides on the conduit, for its published friction. */
  jacket?: CableJacket;
  /** What lies around it, for its ampacity. */
  layers?: CableLayers;
  /**
   * Mass per length of one cable; of building wire it is derived from metal and insulation. From 0.0001 lb/ft to
   * 1000 lb/ft.
   */
  mass_per_length?: MassPerLength;
  /** What a basket grip would hold. */
  sheath?: CableSheath;
  /** Outside diameter of one shielded conductor within an individually shielded cable. From 0.01 in to 60 in. */
  shielded_conductor_diameter?: Length;
  /** Make-up of the cable, for its bending radius. */
  shielding?: CableShielding;
}

/** One whole run with the name it is compared under. */
export interface NamedRun {
  /** What it is called here. */
  name: string;
  /** The run, complete by itself. */
  run: DuctRunRequest;
}

export const OPERATION_NAME_VALUES = ["duct_run", "duct_run_compare", "permitted_use", "conduit_size", "fill", "conductor_count", "cover", "trench", "spacers", "encasement", "flotation", "earth_load", "joints", "expansion", "supports", "pull_box", "pull_plan", "pull_tension", "ampacity", "voltage_drop"] as const;
/** The calculations an item may ask for. Answers may bring others. */
export type OperationName = (typeof OPERATION_NAME_VALUES)[number] | (string & {});

/** What to order of one line of cables. */
export interface OrderedCable {
  /** Cables of this line. */
  count: number;
  /** One cable: route, tails, racking, splices and waste. */
  length: Length;
  /** One cable, rounded up to a length that is sold. */
  order_length: Length;
  /** All cables of the line. */
  total_order_length: Length;
  /** Reels, if their length was given and holds one cable. */
  reel_count?: number;
}

/** The method that allows more, where both were asked. */
export interface OtherMethod {
  /** What it allows. */
  ampacity: Current;
  /** Temperature of its hottest conductor. */
  conductor_temperature: Temperature;
  /** By how much it allows more. */
  difference_percent: number;
  /** The method. */
  method: AmpacityMethod;
}

export const PAGE_VALUES = ["sheet", "takeoff", "crew"] as const;
/** Pages on which an answer may be read: the calculation sheet, the takeoff, and what the crew needs. */
export type Page = (typeof PAGE_VALUES)[number];

/** The pavement that a trench goes through; its top is grade, and it is laid again as thick as it was. */
export interface Pavement {
  /** What it is made of. */
  kind: PavementKind;
  /** How thick it is. From 0.5 in to 48 in. */
  thickness: Length;
  /** How far beyond each edge of the trench it is cut. From 0 in to 240 in. */
  cut_back?: Length;
}

export const PAVEMENT_KIND_VALUES = ["asphalt", "concrete", "pavers"] as const;
/** What a pavement is made of. Answers may bring others. */
export type PavementKind = (typeof PAVEMENT_KIND_VALUES)[number] | (string & {});

/** Pavement in place; what is taken up of it is no spoil. */
export interface PavementTakeoff {
  /** Width of the cut; the greatest, if it varies. */
  cut_width: Length;
  /** Kind of the pavement. */
  kind: PavementKind;
  /** Taken up, the whole cut. */
  removal_area: Area;
  /** Taken up, in place. */
  removal_volume: Volume;
  /** Laid again, the whole cut. */
  restoration_area: Area;
  /** Laid again, in place. */
  restoration_volume: Volume;
  /** Along both sides and across both ends. */
  saw_cut_length: Length;
}

/** So many stations for each stick of duct. */
export interface PerStickInterval {
  /** Stations for each stick. */
  count: number;
  /** Fixed text that says: by stick. */
  kind: "per_stick";
  /** Length of a stick. From 0.25 ft to 1000 ft. */
  stick_length: Length;
}

/** The answer of permitted-use with everything that defends it. */
export interface PermittedUseAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: PermittedUseResult;
  /** The request with every default filled in, if asked for. */
  request?: PermittedUseRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of permitted_use. */
export interface PermittedUseItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: permitted use. */
  operation: "permitted_use";
  /** The body of `POST /v1/permitted-use`. */
  request: PermittedUseRequest;
}

/** An answer of permitted_use. */
export interface PermittedUseItemAnswer {
  /** The answer of `POST /v1/permitted-use`. */
  answer: PermittedUseAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: permitted use. */
  operation: "permitted_use";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** A conduit and everything it meets. */
export interface PermittedUseRequest {
  /** Type of conduit. */
  conduit_type: ConduitType;
  /** Places and ways it is used. */
  uses: ConduitUse[];
  /** Highest temperature around it. From -100 degF to 300 degF. */
  ambient_temperature?: Temperature;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
}

/** Whether the conduit may be used so. */
export interface PermittedUseResult {
  /** Each use, in the order asked. */
  uses: JudgedUse[];
}

/** An answer of permitted_use. */
export interface PermittedUseStreamAnswer {
  /** The answer of `POST /v1/permitted-use`. */
  answer: PermittedUseAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: permitted use. */
  operation: "permitted_use";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const PIECE_SYSTEM_VALUES = ["pieces", "whole_tier", "whole_bank"] as const;
/** Whether pieces carry a few ducts, a whole tier, or the whole bank. */
export type PieceSystem = (typeof PIECE_SYSTEM_VALUES)[number];

export const PISTON_CONVENTION_VALUES = ["full_travel", "centered"] as const;
/** How far to open an expansion fitting: by its full travel, or centered on the movement it takes. */
export type PistonConvention = (typeof PISTON_CONVENTION_VALUES)[number];

/** One line of the table the crew carries. */
export interface PistonOpening {
  /** Opening of the piston, measured from fully closed. */
  opening: Length;
  /** Temperature of the conduit. */
  temperature: Temperature;
}

export const PLACE_KIND_VALUES = ["manhole", "vault", "handhole", "pull_box", "conduit_body", "pad", "equipment", "pole_base", "stub_up", "capped", "existing_duct"] as const;
/** What stands at an end of a run or at a pull point. Answers may bring others. */
export type PlaceKind = (typeof PLACE_KIND_VALUES)[number] | (string & {});

/** One duct of the bank, from the lower left corner of the bank without its cover. */
export interface PlacedDuct {
  /** Outside diameter of the duct. */
  outside_diameter: Length;
  /** Whether it carries signals. */
  signal: boolean;
  /** Tier, from 1 at the bottom. */
  tier: number;
  /** Distance of its center to the right. */
  x: Length;
  /** Distance of its center upward. */
  y: Length;
}

/** One pull of the plan. */
export interface PlannedPull {
  /** Bends of this pull together. */
  bend_total: Angle;
  /** Forward toward the end of the route, or reversed. */
  direction: PullDirection;
  /** Where it ends. */
  end_position: Length;
  /** Highest tension anywhere along the pull. */
  highest_tension: Force;
  /** Where the pull starts, along the route from its start. */
  start_position: Length;
  /** Tension at the pulling end. */
  tension: Force;
  /** The largest share of its limits that it uses. */
  utilization_percent: number;
  /** Whether it keeps its limits, or was not judged. */
  verdict: Verdict;
  /** Force with which the reel must hold back, if it must. */
  brake_tension?: Force;
  /** The pull at the low friction, where the route can run away. */
  braking_case?: BrakingCase;
  /** Highest sidewall pressure, if there is a bend. */
  sidewall_pressure?: ForcePerLength;
}

export const PLASTIC_MATERIAL_VALUES = ["pvc", "hdpe"] as const;
/** What a duct by its diameters is made of. */
export type PlasticMaterial = (typeof PLASTIC_MATERIAL_VALUES)[number];

export const POUR_PRACTICE_VALUES = ["formed", "trench_formed"] as const;
/** Against what concrete is poured. */
export type PourPractice = (typeof POUR_PRACTICE_VALUES)[number];

export const POUR_SHAPE_VALUES = ["bounding_rectangle", "stepped"] as const;
/** Whether concrete fills the bounding rectangle or steps with the tiers. */
export type PourShape = (typeof POUR_SHAPE_VALUES)[number];

/** A power with its unit. */
export interface Power {
  /** The unit, by its code. */
  unit: PowerUnit;
  /** The number, in the unit. */
  value: number;
}

/** A power per length with its unit; the heat that a cable gives off is one. */
export interface PowerPerLength {
  /** The unit, by its code. */
  unit: PowerPerLengthUnit;
  /** The number, in the unit. */
  value: number;
}

export const POWER_PER_LENGTH_UNIT_VALUES = ["W/m", "W/ft"] as const;
/** Units of power per length. */
export type PowerPerLengthUnit = (typeof POWER_PER_LENGTH_UNIT_VALUES)[number];

export const POWER_UNIT_VALUES = ["W", "kW"] as const;
/** Units of power. */
export type PowerUnit = (typeof POWER_UNIT_VALUES)[number];

/** The interval of a published specification or of the trade, by name. */
export interface PresetInterval {
  /** Fixed text that says: by a specification. */
  kind: "preset";
  /** The specification. */
  preset: SpacerPreset;
}

/** A pressure or stress with its unit. */
export interface Pressure {
  /** The unit, by its code. */
  unit: PressureUnit;
  /** The number, in the unit. */
  value: number;
}

export const PRESSURE_UNIT_VALUES = ["kPa", "MPa", "psi", "psf"] as const;
/** Units of pressure and stress. */
export type PressureUnit = (typeof PRESSURE_UNIT_VALUES)[number];

/** Problem details by RFC 9457. */
export interface Problem {
  /** What happened to this request. */
  detail: string;
  /** Id of the request, also in X-Request-ID. */
  request_id: string;
  /** HTTP status. */
  status: number;
  /** What kind of problem it is. */
  title: string;
  /** URI of the page that explains this kind of problem. */
  type: string;
  /** Every fault found, up to a thousand. */
  errors?: Fault[];
}

/** Elevations along the run, straight between the points: they give grades and cover. */
export interface Profile {
  /** The points from the start of the run to its end. */
  points: ElevationPoint[];
  /**
   * What the line is: top of the envelope, of the ducts alone, or the invert of the lowest duct, the bottom of
   * its bore.
   */
  reference: ProfileReference;
}

/** Tension at one place of the run. */
export interface ProfilePoint {
  /** Distance along the run from where the cable enters. */
  position: Length;
  /** Tension there. */
  tension: Force;
}

export const PROFILE_REFERENCE_VALUES = ["top_of_envelope", "top_of_duct", "duct_invert"] as const;
/** What the line of a profile is. */
export type ProfileReference = (typeof PROFILE_REFERENCE_VALUES)[number];

/** The answer of pull-box with everything that defends it. */
export interface PullBoxAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: PullBoxResult;
  /** The request with every default filled in, if asked for. */
  request?: PullBoxRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of pull_box. */
export interface PullBoxItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: pull box. */
  operation: "pull_box";
  /** The body of `POST /v1/pull-box`. */
  request: PullBoxRequest;
}

/** An answer of pull_box. */
export interface PullBoxItemAnswer {
  /** The answer of `POST /v1/pull-box`. */
  answer: PullBoxAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: pull box. */
  operation: "pull_box";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** What enters a box. */
export interface PullBoxRequest {
  /** The circuits in them, each in the entries by which it goes in and out. */
  circuits: BoxCircuit[];
  /** Every raceway that enters it. */
  entries: BoxEntry[];
  /**
   * Highest voltage between conductors in it: over the threshold of the edition the cables size it. From 1 V to
   * 800000 V.
   */
  voltage: Voltage;
  /** The box as planned or built, held against what it must measure. */
  box?: BoxSize;
  /**
   * Boxes that can be had: the smallest that holds the entries is named. A box that is given is judged by
   * itself.
   */
  box_sizes?: BoxSize[];
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /** Racks for the cable, in a manhole. */
  racking?: Racking;
  /** The side that comes off: opposite to it conductors need only the room to bend. */
  removable_cover?: BoxWall;
  /** What it is. */
  structure?: Structure;
}

/** What a box must measure for what enters it; a dimension that no rule sets is absent. */
export interface PullBoxResult {
  /** The boxes that can be had, as listed. */
  candidates: BoxCandidate[];
  /** Every circuit between two of its entries. */
  pulls: PullThrough[];
  /** What it is. */
  structure: Structure;
  /** Least opening of the lid of a manhole. */
  least_access_opening?: Length;
  /** From back to front. */
  least_depth?: LeastDimension;
  /** From left to right. */
  least_length?: LeastDimension;
  /** From bottom to top. */
  least_width?: LeastDimension;
  /** The racks, if they were asked. */
  racking?: RackedCable;
  /** Conductors that take volume, if there are any. */
  small_conductors?: SmallConductorVolume;
  /** The least by volume of the boxes that hold the entries, or, where none is known to, that may. */
  smallest_box?: BoxCandidate;
}

/** An answer of pull_box. */
export interface PullBoxStreamAnswer {
  /** The answer of `POST /v1/pull-box`. */
  answer: PullBoxAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: pull box. */
  operation: "pull_box";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const PULL_DIRECTION_VALUES = ["forward", "reversed"] as const;
/** From which end the cable is pulled. Answers may bring others. */
export type PullDirection = (typeof PULL_DIRECTION_VALUES)[number] | (string & {});

export const PULL_KIND_VALUES = ["straight", "angle", "u_pull"] as const;
/**
 * How conductors go through a box: to the wall opposite, to a wall beside it, or back out of the same wall.
 * Answers may bring others.
 */
export type PullKind = (typeof PULL_KIND_VALUES)[number] | (string & {});

/** The answer of pull-plan with everything that defends it. */
export interface PullPlanAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: PullPlanResult;
  /** The request with every default filled in, if asked for. */
  request?: PullPlanRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of pull_plan. */
export interface PullPlanItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: pull plan. */
  operation: "pull_plan";
  /** The body of `POST /v1/pull-plan`. */
  request: PullPlanRequest;
}

/** An answer of pull_plan. */
export interface PullPlanItemAnswer {
  /** The answer of `POST /v1/pull-plan`. */
  answer: PullPlanAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: pull plan. */
  operation: "pull_plan";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** Cables, conduit, the whole route, and where pull points may stand. */
export interface PullPlanRequest {
  /** The cables pulled together, one line for each kind. */
  cables: CableLine[];
  /** The conduit. */
  conduit: Conduit;
  /** The route, in the order of the pull, every bend and elbow included. */
  sections: RouteSection[];
  /** Limit of the cable's maker, in place of the one of the cable type. From 1 lbf/ft to 100000 lbf/ft. */
  allowable_sidewall_pressure?: ForcePerLength;
  /**
   * Limit of the cable's maker, in place of the one computed from conductors; limits of device and grip hold
   * beside it where they are given. From 1 lbf to 1e+06 lbf.
   */
  allowable_tension?: Force;
  /** How the cables lie, where it is sure; else each check takes the worst way they may lie. */
  arrangement?: CableArrangement;
  /** How the rope holds the cable. */
  attachment?: Attachment;
  /** Where pull boxes, handholes or manholes may stand. */
  box_positions?: BoxPositions;
  /** Force with which the reel brake can hold back. From 1 lbf to 1e+06 lbf. */
  brake_limit?: Force;
  /** Low coefficient of friction, at which a cable runs away downhill most: the reel brake reckons with it. */
  braking_friction_coefficient?: number;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /** How many of several conductors share the pull. */
  conductor_counting?: ConductorCounting;
  /** Rating of the pulling device. From 1 lbf to 1e+06 lbf. */
  device_limit?: Force;
  /**
   * Cable between reel and conduit whose friction is the incoming tension, where that is not given. From 0 ft to
   * 1000 ft.
   */
  feed_length?: Length;
  /** Coefficient of friction of one cable against the conduit. */
  friction_coefficient?: number;
  /** Limit of the basket grip. From 1 lbf to 1e+06 lbf. */
  grip_limit?: Force;
  /** Tension at the entry without a brake, from the reel. From 0 lbf to 1e+06 lbf. */
  incoming_tension?: Force;
  /** Factor on friction for cables side by side, in place of the one of their arrangement. */
  weight_correction_factor?: number;
  /** Where the weight correction factor multiplies friction. */
  weight_correction_in?: WeightCorrectionUse;
}

/** The fewest pulls, or the bend that forbids any. */
export interface PullPlanResult {
  /** Pull points between them. */
  box_count: number;
  /** Pulls of the plan. */
  pull_count: number;
  /** The pulls in the order of the route; none if no plan keeps the limits. */
  pulls: PlannedPull[];
  /** Section of the route, in the request, that forbids any plan. */
  forbidding_pointer?: string;
  /** Largest share of its limits that any pull uses; with so many judged pulls the lowest there is. */
  highest_utilization_percent?: number;
}

/** An answer of pull_plan. */
export interface PullPlanStreamAnswer {
  /** The answer of `POST /v1/pull-plan`. */
  answer: PullPlanAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: pull plan. */
  operation: "pull_plan";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** How cables are pulled: friction, gear, and what they may bear. */
export interface PullPractice {
  /** Limit of the cable's maker, in place of the one of the cable type. From 1 lbf/ft to 100000 lbf/ft. */
  allowable_sidewall_pressure?: ForcePerLength;
  /**
   * Limit of the cable's maker, in place of the one computed from conductors; limits of device and grip hold
   * beside it where they are given. From 1 lbf to 1e+06 lbf.
   */
  allowable_tension?: Force;
  /** How the cables lie, where it is sure; else each check takes the worst way they may lie. */
  arrangement?: CableArrangement;
  /** How the rope holds the cable. */
  attachment?: Attachment;
  /** Force with which the reel brake can hold back. From 1 lbf to 1e+06 lbf. */
  brake_limit?: Force;
  /** Low coefficient of friction, at which a cable runs away downhill most: the reel brake reckons with it. */
  braking_friction_coefficient?: number;
  /** How many of several conductors share the pull. */
  conductor_counting?: ConductorCounting;
  /** Rating of the pulling device. From 1 lbf to 1e+06 lbf. */
  device_limit?: Force;
  /**
   * Cable between reel and conduit whose friction is the incoming tension, where that is not given. From 0 ft to
   * 1000 ft.
   */
  feed_length?: Length;
  /** Coefficient of friction of one cable against the conduit. */
  friction_coefficient?: number;
  /** Limit of the basket grip. From 1 lbf to 1e+06 lbf. */
  grip_limit?: Force;
  /** Tension at the entry without a brake, from the reel. From 0 lbf to 1e+06 lbf. */
  incoming_tension?: Force;
  /** Factor on friction for cables side by side, in place of the one of their arrangement. */
  weight_correction_factor?: number;
  /** Where the weight correction factor multiplies friction. */
  weight_correction_in?: WeightCorrectionUse;
}

/** The answer of pull-tension with everything that defends it. */
export interface PullTensionAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: PullTensionResult;
  /** The request with every default filled in, if asked for. */
  request?: PullTensionRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of pull_tension. */
export interface PullTensionItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: pull tension. */
  operation: "pull_tension";
  /** The body of `POST /v1/pull-tension`. */
  request: PullTensionRequest;
}

/** An answer of pull_tension. */
export interface PullTensionItemAnswer {
  /** The answer of `POST /v1/pull-tension`. */
  answer: PullTensionAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: pull tension. */
  operation: "pull_tension";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** Cables, conduit, and the route in the order of the pull; and what to find beside the tension. */
export interface PullTensionRequest {
  /** The cables pulled together, one line for each kind. */
  cables: CableLine[];
  /** The conduit. */
  conduit: Conduit;
  /** The route, in the order of the pull, every bend and elbow included. */
  sections: RouteSection[];
  /** Limit of the cable's maker, in place of the one of the cable type. From 1 lbf/ft to 100000 lbf/ft. */
  allowable_sidewall_pressure?: ForcePerLength;
  /**
   * Limit of the cable's maker, in place of the one computed from conductors; limits of device and grip hold
   * beside it where they are given. From 1 lbf to 1e+06 lbf.
   */
  allowable_tension?: Force;
  /** How the cables lie, where it is sure; else each check takes the worst way they may lie. */
  arrangement?: CableArrangement;
  /** How the rope holds the cable. */
  attachment?: Attachment;
  /** Force with which the reel brake can hold back. From 1 lbf to 1e+06 lbf. */
  brake_limit?: Force;
  /** Low coefficient of friction, at which a cable runs away downhill most: the reel brake reckons with it. */
  braking_friction_coefficient?: number;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /** How many of several conductors share the pull. */
  conductor_counting?: ConductorCounting;
  /** Rating of the pulling device. From 1 lbf to 1e+06 lbf. */
  device_limit?: Force;
  /**
   * Cable between reel and conduit whose friction is the incoming tension, where that is not given. From 0 ft to
   * 1000 ft.
   */
  feed_length?: Length;
  /** Whether to find the largest friction, incoming tension and last straight that still comply. */
  find_largest?: boolean;
  /** Coefficient of friction of one cable against the conduit. */
  friction_coefficient?: number;
  /** Gives the pull at a low and a high friction as well. */
  friction_range?: FrictionRange;
  /** Limit of the basket grip. From 1 lbf to 1e+06 lbf. */
  grip_limit?: Force;
  /** Tension at the entry without a brake, from the reel. From 0 lbf to 1e+06 lbf. */
  incoming_tension?: Force;
  /** Gives the cable to order as well. */
  ordering?: CableOrder;
  /** Gives the tension along the run at points this far apart, for plotting. From 0.25 ft to 1000 ft. */
  profile_spacing?: Length;
  /** Factor on friction for cables side by side, in place of the one of their arrangement. */
  weight_correction_factor?: number;
  /** Where the weight correction factor multiplies friction. */
  weight_correction_in?: WeightCorrectionUse;
}

/** The pull from the first section to the last, and from the other end. */
export interface PullTensionResult {
  /** What the cable allows in a bend. */
  allowable_sidewall_pressure: ForcePerLength;
  /** How the cables lie, or the way with most friction. */
  arrangement: CableArrangement;
  /** All bends of the route together. */
  bend_total: Angle;
  /** Direction that complies, or was judged, or uses less of the limits. */
  better_direction: PullDirection;
  /** Why that end, in a sentence. */
  better_reason: string;
  /** Highest tension anywhere along the pull. */
  highest_tension: Force;
  /** Tension at the entry without a brake. */
  incoming_tension: Force;
  /** Pulling lubricant for the run. */
  lubricant_volume: Volume;
  /** The same pull from the other end. */
  reversed: ReversedPull;
  /** The sections in the order of the pull. */
  sections: SectionTension[];
  /** Tension at the pulling end. */
  tension: Force;
  /** The largest share of tension, sidewall pressure and brake that is used. */
  utilization_percent: number;
  /** Factor on friction for that arrangement. */
  weight_correction_factor: number;
  /** What conductors, grip and gear allow; absent where the conductors are not known. */
  allowable_tension?: Force;
  /** Force with which the reel must hold back, if it must. */
  brake_tension?: Force;
  /** The pull at the low friction, where the route can run away. */
  braking_case?: BrakingCase;
  /** Where the cable must be supported, if it hangs farther than its conductors may. */
  cable_supports?: HangingCable[];
  /** The cable to order, a line of cables each, if asked. */
  cables_to_order?: OrderedCable[];
  /** Free height above the cables; up to four cables. */
  clearance?: Length;
  /** The pull at low, expected and high friction, if asked. */
  friction_cases?: FrictionCase[];
  /** Clearance as handbooks print it; higher for the cradle. */
  handbook_clearance?: Length;
  /** Conduit over cable diameter, where three cables govern. */
  jam_ratio?: number;
  /** Conduit over cable diameter times 1.05, the handbook allowance for ovality in bends. */
  jam_ratio_with_ovality?: number;
  /** What would still comply, if asked. */
  largest?: LargestComplying;
  /** Tension along the run for plotting, if asked. */
  profile?: ProfilePoint[];
  /** Highest sidewall pressure, if there is a bend. */
  sidewall_pressure?: ForcePerLength;
}

/** An answer of pull_tension. */
export interface PullTensionStreamAnswer {
  /** The answer of `POST /v1/pull-tension`. */
  answer: PullTensionAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: pull tension. */
  operation: "pull_tension";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** A circuit between two entries; the distance of entries is between their near edges. */
export interface PullThrough {
  /** Name of the circuit. */
  circuit: string;
  /** How it goes. */
  kind: PullKind;
  /** JSON pointers of its two entries. */
  pointers: string[];
  /** Whether it is spliced on its way. */
  spliced: boolean;
  /** Distance of the two entries, where positions and the box tell it. */
  entry_distance?: Length;
  /** Least distance of the two entries, where it turns or is spliced. */
  least_entry_distance?: Length;
  /** Whether the two entries are far enough apart; absent where no distance is asked. */
  verdict?: Verdict;
}

/** Cable on the racks of a manhole. */
export interface RackedCable {
  /** Least radius of the center line of the cable. */
  centerline_radius: Length;
  /** Length of the two reverse bends at each end. */
  offset_length: Length;
  /** Least length of the wall, from duct to duct. */
  wall_length: Length;
}

/** How cable leads from its ducts to the racks on a wall of a manhole, along its length. */
export interface Racking {
  /** How far the racks lie aside of the ducts; none where the ducts face each other. From 0 in to 240 in. */
  offset: Length;
  /** Least radius to the inner side of the cable. From 0.5 in to 120000 in. */
  bending_radius?: Length;
  /** Wall that a splice takes between the bends, where a circuit is spliced. From 0.1 in to 1200 in. */
  splice_wall?: Length;
  /** Straight out of the duct, before the cable bends. From 0 in to 240 in. */
  straight_out?: Length;
}

export const RANK_MEASURE_VALUES = ["price", "labor_hours", "pull_count", "highest_utilization", "pavement_sawcut", "pavement_removal", "excavation", "shoring", "bore", "bore_pit", "conduit", "elbow", "field_bend", "coupling", "expansion_fitting", "terminal_adapter", "conduit_body", "end_bell", "duct_plug", "cap", "wall_penetration", "joint", "fusion_joint", "solvent_cement", "primer", "base_spacer", "intermediate_spacer", "top_spacer", "tie_down", "reinforcing_bar", "tie_bar", "form", "concrete", "bank_ground", "bedding", "select_fill", "import", "native_backfill", "warning_tape", "spoil", "haul_load", "pavement_restoration", "strap", "hanger", "mandrel_pass", "pull_cord", "lubricant", "cable", "cable_reel", "pulling_eye", "cable_support"] as const;
/**
 * What runs are ranked by, least first: a figure of the whole run, or an item of its takeoff. Answers may bring
 * others.
 */
export type RankMeasure = (typeof RANK_MEASURE_VALUES)[number] | (string & {});

/** The caller's own rate for an item; a key left out matches any. */
export interface Rate {
  /** What it is for. */
  item: TakeoffItem;
  /** Of this conduit alone. */
  conduit_type?: ConduitType;
  /** Of this size alone. */
  size?: string;
  /** What it is for one of; what is ordered is rounded up in it. */
  unit?: TakeoffUnit;
  /** Labor hours for one of the unit. */
  unit_labor_hours?: number;
  /** Price for one of the unit, in the caller's money; this, or labor hours, or both. */
  unit_price?: number;
}

/** The method banks are rated by, at one frequency for all, and what concrete and ducts are to their heat. */
export interface RatingPractice {
  /** Thermal resistivity of the concrete. From 20 degC.cm/W to 1000 degC.cm/W. */
  concrete_thermal_resistivity?: ThermalResistivity;
  /** Temperature that the air in every duct is taken to have, as printed tables do. From 0 degC to 150 degC. */
  duct_air_temperature?: Temperature;
  /** What ducts without a type are made of, for their heat; of the others their type tells. */
  duct_material?: WallMaterial;
  /** Thermal resistivity of the duct walls. From 0 K.m/W to 50 K.m/W. */
  duct_thermal_resistivity?: ThermalResistivity;
  /** Frequency of the alternating current. From 10 Hz to 400 Hz. */
  frequency?: Frequency;
  /** Method; both gives the one that allows less, with the other beside it. */
  method?: AmpacityMethod;
}

/** The tables are loaded and requests are welcome. */
export interface Ready {
  /** The word `ready`. */
  status: string;
  /** Hash of all reference tables. */
  tables_version: string;
}

/** The value that would have been taken for want of one; a quantity too, where it is a figure. */
export interface RefusedAssumption {
  /** Where it comes from, or that it is practice. */
  citation: string;
  /** With what right it would be taken. */
  standing: Standing;
  /** The value as a text. */
  text: string;
  /** The value, where it is a figure. */
  quantity?: AnyQuantity;
  /** Id of the source in the table of sources. */
  source_id?: string;
}

/** Longitudinal bars and ties. */
export interface Reinforcing {
  /** Longitudinal bars. */
  bar_count: number;
  /** Size of the longitudinal bars. */
  bar_size: BarSize;
  /** Concrete outside the ties. From 0 in to 240 in. */
  edge_cover?: Length;
  /** Lap over the diameter of a bar, where lap_length is left out. */
  lap_diameter_ratio?: number;
  /** Lap of two bars. From 0 in to 240 in. */
  lap_length?: Length;
  /** Length bars come in. From 0.25 ft to 1000 ft. */
  stock_length?: Length;
  /** What each of the two hooks of a tie takes of its bar. From 0 in to 240 in. */
  tie_hook_length?: Length;
  /** Size of the ties. */
  tie_size?: BarSize;
  /** Distance of the ties. From 0.25 ft to 1000 ft. */
  tie_spacing?: Length;
}

/** Bars of the envelope. */
export interface ReinforcingTakeoff {
  /** Longitudinal bars beside each other. */
  bar_count: number;
  /** Their size. */
  bar_size: BarSize;
  /** Concrete outside the ties. */
  edge_cover: Length;
  /** Laps of all longitudinal bars. */
  lap_count: number;
  /** Lap of two bars. */
  lap_length: Length;
  /** Concrete outside the ducts that the cage takes: edge cover, tie and bar. */
  least_concrete_cover: Length;
  /** Longitudinal bars with their laps, together. */
  longitudinal_length: Length;
  /** All bars together. */
  mass: Mass;
  /** Ties along the pour. */
  tie_count: number;
  /** All ties together. */
  tie_length: Length;
  /** Size of the ties. */
  tie_size: BarSize;
  /** Distance of the ties. */
  tie_spacing: Length;
}

/** What would make a run comply, each change of one thing verified by running it. */
export interface Remedies {
  /**
   * Whether there is more than is told: as many runs were tried as may be and changes left, more than 20 were
   * found, or their runs take more than 4 MiB together.
   */
  cut_short: boolean;
  /** Remedies that were found: runs that comply first, then the cheapest to build. */
  found: Remedy[];
  /** Violations that no remedy removes, each with why. */
  not_found: UnremediedViolation[];
  /** How many changed runs were tried: 50 at most, fewer of a run that takes long. */
  trial_count: number;
}

/** One change that was run: it removes a violation and adds none. */
export interface Remedy {
  /** What kind of change it is. */
  change: ChangeKind;
  /** JSON pointers into that run of what was set. */
  changed: string[];
  /** What to change, in one sentence. */
  message: string;
  /** Violations that are left then. */
  remaining_violation_count: number;
  /** Violations that are gone then. */
  removed: RemovedViolation[];
  /** The run as it was sent with this one change made: to send, to alter further, or to compare. */
  run: DuctRunRequest;
  /** Of the run so changed. */
  verdict: Verdict;
}

/** A violation that the changed run has no more. */
export interface RemovedViolation {
  /** Its code. */
  code: string;
  /** Where it is in the request that was sent. */
  pointer?: string;
}

export const REQUEST_BACK_VALUES = ["completed"] as const;
/** How the request comes back with the answer, if asked for: with every default filled in. */
export type RequestBack = (typeof REQUEST_BACK_VALUES)[number];

/** An electric resistance per length with its unit. */
export interface ResistancePerLength {
  /** The unit, by its code. */
  unit: ResistancePerLengthUnit;
  /** The number, in the unit. */
  value: number;
}

export const RESISTANCE_PER_LENGTH_UNIT_VALUES = ["ohm/km", "ohm/1000ft"] as const;
/** Units of electric resistance per length. */
export type ResistancePerLengthUnit = (typeof RESISTANCE_PER_LENGTH_UNIT_VALUES)[number];

/** The same pull from the other end. */
export interface ReversedPull {
  /** Highest tension anywhere along the pull. */
  highest_tension: Force;
  /** The sections in the order of this pull: the route from its last section to its first. */
  sections: SectionTension[];
  /** Tension at the pulling end. */
  tension: Force;
  /** The largest share of the limits that is used. */
  utilization_percent: number;
  /** Whether it keeps its limits, or was not judged. */
  verdict: Verdict;
  /** Force with which the reel must hold back, if it must. */
  brake_tension?: Force;
  /** The pull at the low friction, where the route can run away. */
  braking_case?: BrakingCase;
  /** Highest sidewall pressure, if there is a bend. */
  sidewall_pressure?: ForcePerLength;
}

/** One section of a route: a straight or a bend. */
export type RouteSection =
  | HorizontalBendSection
  | StraightSection
  | VerticalBendSection;

/** One circuit. */
export interface RunCircuit {
  /** Names of its ducts, as tier-position. */
  ducts: string[];
  /** Stop where it leaves, nearer the end of the run. */
  end: string;
  /** In every conduit on its way. */
  fills: CircuitFill[];
  /** From its start to its end along the center line. */
  length: Length;
  /** What the request calls it, or its place. */
  name: string;
  /** From stop to stop. */
  pulls: CircuitPulls[];
  /** What it carries. */
  service: Service;
  /** Stop where it enters, nearer the start of the run. */
  start: string;
  /** Over that length, if a current or a power is given. */
  voltage_drop?: VoltageDropResult;
}

/**
 * One duct of the run, from the lower left corner of the bank without its cover. It has no place where the first
 * stretch takes no room and an outside diameter is not known.
 */
export interface RunDuct {
  /** Names of the circuits that lie in it; none in a spare. */
  circuits: string[];
  /** Tier-position: tier 1 the bottom, position 1 the left. */
  name: string;
  /** Mandrel of the smallest bore along it, as far as that is known. */
  mandrel_diameter?: Length;
  /** Outside diameter, where it is known. */
  outside_diameter?: Length;
  /** Whether it is for signals. */
  signal?: boolean;
  /** Distance of its center to the right. */
  x?: Length;
  /** Distance of its center upward. */
  y?: Length;
}

export const RUN_END_VALUES = ["end_bell", "coupling", "adapter", "elbow", "conduit_body", "none"] as const;
/** How ducts finish at an end of a run: what is ordered and joined there. */
export type RunEnd = (typeof RUN_END_VALUES)[number];

/** A bend in a level plane. */
export interface RunHorizontalBend {
  /** Change of direction. From 0.1 deg to 360 deg. */
  angle: Angle;
  /** Fixed text that says: a bend in a level plane. */
  kind: "horizontal_bend";
  /** Whether it is bought, bent on site, or laid on a curve. */
  made?: BendMade;
  /** Radius to the center line. From 0.5 in to 120000 in. */
  radius?: Length;
  /** To which side; nothing is reckoned with it, it is drawn. */
  turn?: Turn;
}

/** How ducts are joined, and how their elbows are made. */
export interface RunJoining {
  /** What a joint takes of a stick's length. From 0 in to 240 in. */
  bell_loss?: Length;
  /** Solvent cement that a cemented joint takes. From 1e-05 qt_us to 4 qt_us. */
  cement_per_joint?: Volume;
  /** Pull cord left at each end of a duct. From 0 in to 240 in. */
  cord_tail?: Length;
  /** Straight part at either end of a factory elbow. From 0 in to 240 in. */
  elbow_tangent?: Length;
  /** Bells or plain ends of the sticks; only what is cemented has bells. */
  ends?: DuctEnds;
  /** How much smaller than the bore the mandrel is. From 0 in to 240 in. */
  mandrel_clearance?: Length;
  /** Whether the offcut of one duct starts the next. */
  offcuts_shared?: boolean;
  /** Length a stick is sold by. From 0.25 ft to 1000 ft. */
  stick_length?: Length;
  /** Temperature when joining. From -100 degF to 400 degF. */
  temperature?: Temperature;
  /** Sticks to order beyond those laid. */
  waste_percent?: number;
}

/** What a circuit carries, at the voltage it has; its sets are those of its ducts. */
export interface RunLoad {
  /**
   * Apparent power of the load at the voltage of the source; this, current or power. From 1e-05 kVA to 1e+06
   * kVA.
   */
  apparent_power?: ApparentPower;
  /** Conduit that its voltage drop is reckoned in, as Table 9 tells them apart. */
  conduit_material?: CircuitConduit;
  /**
   * Current of the circuit, all its sets together; without it the answer says what it may be. From 0.001 A to 20
   * kA.
   */
  current?: Current;
  /** At this load, to tell what is lost in a year. From 0 h to 8784 h. */
  duration_per_year?: Duration;
  /** Most that may be lost. */
  limit_percent?: number;
  /** Mean load of a day in percent of its peak. */
  load_factor_percent?: number;
  /**
   * Conductors in each duct that carry the current, neutrals that count included; other neutrals and grounds
   * carry none here.
   */
  loaded_conductor_count?: number;
  /**
   * Of the loaded conductors in each duct, those that are neutrals, where loads have harmonics: each is as large
   * as the phases, and is taken to carry as much.
   */
  loaded_neutral_count?: number;
  /** Rating of the overcurrent device ahead, for the least grounding conductor. From 1 A to 6 kA. */
  overcurrent_device?: Current;
  /** Power of the load at the voltage of the source; this, current or apparent_power. From 0.01 W to 1e+06 kW. */
  power?: Power;
  /** Of the load, which lags; of direct current there is none. */
  power_factor?: number;
  /** Of one conductor to neutral, in place of the table's. From 0 ohm/1000ft to 1000 ohm/1000ft. */
  reactance?: ResistancePerLength;
  /** Of one conductor at its temperature, in place of the table's. From 0.0001 ohm/1000ft to 1000 ohm/1000ft. */
  resistance?: ResistancePerLength;
  /** Where the shields are grounded, if the cables have any. */
  shield_grounding?: ShieldGrounding;
  /** Kind of circuit: three conductors make a set, or two. */
  system?: CircuitSystem;
  /** Highest temperature of the conductor; what is lost on the way is reckoned at it. From 0 degC to 250 degC. */
  temperature_limit?: Temperature;
  /**
   * Temperature that the terminals at both ends are marked for; unmarked ones are taken for 60 degC to 100 A of
   * overcurrent_device or, without one, of current, and for 75 degC above; where neither is given, for 60 degC
   * to 1 AWG.
   */
  terminal_rating?: TerminalRating;
}

/** One straight run. */
export interface RunMovement {
  /** Where the run is fixed between them; its ends are fixed. */
  anchor_positions: Length[];
  /** Fittings that share the change; 0 if none is required. */
  fitting_count: number;
  /** Where the barrels are clamped, one for each fitting. */
  fitting_positions: Length[];
  /** Whether the change reaches what calls for a fitting. */
  fitting_required: boolean;
  /** Straps that hold: the clamps of the barrels, and the anchors without barrels. All others let the run slide. */
  holding_strap_positions: Length[];
  /** Length of the run. */
  length: Length;
  /** Change over the whole span of temperature. */
  length_change: Length;
  /** Openings at the temperatures asked for and of the installation, from the lowest on. */
  piston_openings: PistonOpening[];
  /**
   * Where the pistons end when fully open, in the order of the fittings: between a barrel's clamp and this place
   * no strap may stand.
   */
  piston_reaches: Length[];
  /** Share of the travel of a fitting that its movement uses. */
  travel_used_percent?: number;
}

/** Expansion fittings and straps of all that lies above ground. */
export interface RunMoving {
  /** How lengths of rmc and imc are coupled. */
  coupling?: Coupling;
  /** Distance of the end straps from the terminations. From 0 ft to 1000 ft. */
  end_distance?: Length;
  /** Travel of one expansion fitting. From 0.25 in to 60 in. */
  fitting_travel?: Length;
  /** Temperatures for which to give the opening. */
  opening_temperatures?: Temperature[];
  /** How far to open the fittings. */
  piston_convention?: PistonConvention;
  /**
   * Length of the piston that stays in the barrel when the fitting is fully open, with its coupling. A fitting
   * fully open is as long as this and twice its travel. From 0 in to 12 in.
   */
  piston_engagement?: Length;
  /** Highest temperature of the air that the conduit is permitted or listed for. From 50 degF to 400 degF. */
  service_temperature?: Temperature;
  /** Most of the travel of a fitting that its share of the movement may use. */
  usable_travel_percent?: number;
}

/** An end of the run, or a pull point in it. */
export interface RunPlace {
  /** What stands there. */
  kind: PlaceKind;
  /** The box as planned or built, held against what it must measure. */
  box?: BoxSize;
  /**
   * Boxes that can be had: the smallest that holds the entries is named. A box that is given is judged by
   * itself.
   */
  box_sizes?: BoxSize[];
  /** Cable beyond the conduit there, for racking, tail and termination together. From 0 ft to 1000 ft. */
  cable_allowance?: Length;
  /** Wall of the box by which ducts leave toward the end of the run; they come in by the left. */
  exit_wall?: BoxWall;
  /** How each duct finishes there. */
  finish?: RunEnd;
  /**
   * Height above grade to which the ducts come up: the buried stretch beside it then gets an elbow and a
   * straight leg up to it. From 0 ft to 100 ft.
   */
  height?: Length;
  /** Its name. */
  name?: string;
  /** Racks for the cable, in a manhole. */
  racking?: Racking;
  /** The side that comes off: opposite to it conductors need only the room to bend. */
  removable_cover?: BoxWall;
  /** Conduit of that elbow and leg. */
  riser_conduit_type?: ConduitType;
  /** Radius of that elbow. From 0.5 in to 120000 in. */
  riser_radius?: Length;
  /** Whether the circuits that pass are spliced there. */
  spliced?: boolean;
}

/** One section of a run in plan or profile: a straight or a bend. */
export type RunSection =
  | RunHorizontalBend
  | RunStraight
  | RunVerticalBend;

export const RUN_SETTING_VALUES = ["above_ground", "direct_buried", "encased"] as const;
/** Where a run lies, which decides whether it is free to move. */
export type RunSetting = (typeof RUN_SETTING_VALUES)[number];

/** An end of the run or a pull point. */
export interface RunStop {
  /** What stands there. */
  kind: PlaceKind;
  /** What the request calls it, or its place. */
  name: string;
  /** Distance in plan from the start. */
  station: Length;
  /** What it must measure for the circuits that pass it, where known. */
  box?: PullBoxResult;
}

/** A straight; in plan where a profile gives the heights, else along the conduit. */
export interface RunStraight {
  /** Fixed text that says: a straight section. */
  kind: "straight";
  /** Its length. From 0.01 ft to 100000 ft. */
  length: Length;
  /** Slope, positive climbs toward the end of the run; none with a profile. From -90 deg to 90 deg. */
  grade?: Grade;
}

/** One stretch of the run, each part as its own operation tells it. */
export interface RunStretch {
  /** Its ducts by conduit, risers of another apart. */
  conduits: StretchJoints[];
  /** Length of a duct along its center line, risers included. */
  length: Length;
  /** What the request calls it, or its place. */
  name: string;
  /** Whether each type of its conduit may be used as it is here. */
  permitted_uses: StretchUse[];
  /** Length in plan, that of its trench. */
  plan_length: Length;
  /** The parts above grade at its ends. */
  risers: StretchRiser[];
  /** How it is laid. */
  setting: SettingKind;
  /** Where it begins, in plan from the start. */
  station: Length;
  /** What its circuits may carry where it lies deepest, if they have a load. */
  ampacity?: AmpacityResult;
  /** Of all ducts together in the fluid of the bore; negative if they sink. */
  bore_uplift_per_length?: ForcePerLength;
  /** The cover it needs, where it is buried. */
  cover?: CoverResult;
  /**
   * If asked: under its least cover, where that is another under its greatest, and between them where
   * groundwater stands at the top of what is buried.
   */
  earth_loads?: EarthLoadResult[];
  /** The concrete around its bank. */
  encasement?: EncasementResult;
  /** Of its straights above ground. */
  expansion?: ExpansionResult;
  /** While its concrete is poured. */
  flotation?: FlotationResult;
  /** Finished and empty, where it lies under the groundwater. */
  groundwater_flotation?: FlotationResult;
  /** The spacers of its bank. */
  spacers?: SpacersResult;
  /** Joints of the structure, each with one more fitting in every duct, if there are any. */
  structure_joints?: JointFitting[];
  /** Of each straight above ground. */
  supports?: SupportsResult[];
  /** The trench it lies in. */
  trench?: TrenchResult;
}

/** A bend in a vertical plane, from the grade of what is before it; none with a profile. */
export interface RunVerticalBend {
  /** Slope where it ends, positive climbs. From -90 deg to 90 deg. */
  exit_grade: Grade;
  /** Fixed text that says: a bend in a vertical plane. */
  kind: "vertical_bend";
  /** Slope where it begins, positive climbs. From -90 deg to 90 deg. */
  entry_grade?: Grade;
  /** Whether it is bought, bent on site, or laid on a curve. */
  made?: BendMade;
  /** Radius to the center line. From 0.5 in to 120000 in. */
  radius?: Length;
}

/** One section of the pull. */
export interface SectionTension {
  /** Highest tension in it, at its ends or inside a bend. */
  highest_tension: Force;
  /** Tension entering the section. */
  tension_in: Force;
  /** Tension leaving the section. */
  tension_out: Force;
  /** Highest pressure on the worst cable; bends only. */
  sidewall_pressure?: ForcePerLength;
}

export const SEPARATION_MEASURE_VALUES = ["clear", "center_to_center"] as const;
/** How separations are measured. */
export type SeparationMeasure = (typeof SEPARATION_MEASURE_VALUES)[number];

export const SERVICE_VALUES = ["power", "signal"] as const;
/** What a circuit carries. Answers may bring others. */
export type Service = (typeof SERVICE_VALUES)[number] | (string & {});

/** How a stretch is laid: encased, buried, bored, above ground, or there already. */
export type Setting =
  | AboveGroundSetting
  | BoredSetting
  | DirectBuriedSetting
  | EncasedSetting
  | ExistingSetting;

export const SETTING_KIND_VALUES = ["encased", "direct_buried", "above_ground", "bored", "existing"] as const;
/** How a stretch is laid. Answers may bring others. */
export type SettingKind = (typeof SETTING_KIND_VALUES)[number] | (string & {});

export const SEVERITY_VALUES = ["violation", "caution", "note"] as const;
/**
 * Weight of a finding: a broken rule or limit, something unwise or near a limit, or a note. Answers may bring
 * others.
 */
export type Severity = (typeof SEVERITY_VALUES)[number] | (string & {});

export const SHIELD_GROUNDING_VALUES = ["both_ends", "single_point"] as const;
/** Where shields are grounded. */
export type ShieldGrounding = (typeof SHIELD_GROUNDING_VALUES)[number];

/** The place, once. */
export interface Site {
  /** Temperature of the earth at the depth of the ducts, where circuits have a load. From -20 degC to 70 degC. */
  earth_temperature?: Temperature;
  /**
   * Thermal resistivity of the earth and the backfill, where circuits have a load. From 20 degC.cm/W to 1000
   * degC.cm/W.
   */
  earth_thermal_resistivity?: ThermalResistivity;
  /**
   * Depth of the groundwater below grade, at its highest; assumed where an earth_load asks. From 0 in to 1200
   * in.
   */
  groundwater_depth?: Length;
  /** What conduit above ground sees; without them its movement is not judged. */
  temperatures?: Temperatures;
}

/** One trade size of the type with what the set would take of it. */
export interface SizeCandidate {
  /** Inside area, as printed. */
  conduit_area: Area;
  /** Conductor area in percent of conduit area. */
  fill_percent: number;
  /** Area the percentage allows, as printed. */
  limit_area: Area;
  /** Whether every conductor is narrower than the bore. */
  passes_bore: boolean;
  /** Whether it complies only by the 0.8 rule of Note 7. */
  rounding_decided: boolean;
  /** Limit area less conductor area; negative when over. */
  spare_area: Area;
  /** Trade size of the conduit. */
  trade_size: TradeSize;
  /** Whether the set complies and leaves the spare asked for. */
  verdict: Verdict;
  /** Conduit over cable diameter; for three conductors or cables only. */
  jam_ratio?: number;
  /** Conduit over cable diameter times 1.05. */
  jam_ratio_with_ovality?: number;
}

/** What one change of the set does to the size. */
export interface SizeChange {
  /** What changes on that line. */
  change: ConductorChange;
  /** Line of `cables` that changes, in the request. */
  pointer: string;
  /** Smallest size that complies with the change; absent if none does. */
  trade_size?: TradeSize;
}

/** Conductors smaller than 4 AWG. */
export interface SmallConductorVolume {
  /** Conductors that count, those spliced at every entry. */
  conductor_count: number;
  /** Volume they take, without devices and clamps. */
  least_volume: Volume;
  /** Least standard box for them, where nothing larger enters. */
  standard_box?: StandardBoxFound;
}

export const SOIL_KIND_VALUES = ["sand", "loam", "clay", "blasted_rock", "dense_clay", "sand_and_gravel"] as const;
/** Soils with factors from bank to loose and compacted. */
export type SoilKind = (typeof SOIL_KIND_VALUES)[number];

/** A cited document. */
export interface SourceRow {
  /** Title, publisher and date of the document. */
  citation: string;
  /** Id by which rows and findings name the document. */
  source_id: string;
  /** Where its figures were read. */
  note?: string;
}

/** Sources, with the hash of all tables. */
export interface SourceTable {
  /** The rows, as the source has them. */
  rows: SourceRow[];
  /** Hash of all reference tables. */
  tables_version: string;
}

/** How far apart spacers stand: a distance, so many a stick, or the interval of a specification. */
export type SpacerInterval =
  | DistanceInterval
  | PerStickInterval
  | PresetInterval;

export const SPACER_PRESET_VALUES = ["cegs_4ft", "wsu_encased_8ft", "wsu_direct_5ft", "lawa_direct_4ft", "telecom_direct_10ft", "master_5_per_20ft", "trade_two_per_10ft", "trade_6ft"] as const;
/** Intervals of published specifications and of the trade, named after where they come from. */
export type SpacerPreset = (typeof SPACER_PRESET_VALUES)[number];

/** The answer of spacers with everything that defends it. */
export interface SpacersAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: SpacersResult;
  /** The request with every default filled in, if asked for. */
  request?: SpacersRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of spacers. */
export interface SpacersItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: spacers. */
  operation: "spacers";
  /** The body of `POST /v1/spacers`. */
  request: SpacersRequest;
}

/** An answer of spacers. */
export interface SpacersItemAnswer {
  /** The answer of `POST /v1/spacers`. */
  answer: SpacersAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: spacers. */
  operation: "spacers";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** The pieces for ducts of one size. */
export interface SpacersOfSize {
  /** Base spacers, which carry the bottom tier. */
  base_spacer_count: number;
  /** Intermediate spacers, which part two tiers. */
  intermediate_spacer_count: number;
  /** All pieces of this size with waste, rounded up. */
  order_count: number;
  /** Of the ducts that they carry or close. */
  outside_diameter: Length;
  /** Pieces that close the top tier. */
  top_piece_count: number;
}

/** One straight run of a duct bank and how its spacers are specified. */
export interface SpacersRequest {
  /** Length of the run, face to face. From 0.01 ft to 100000 ft. */
  length: Length;
  /** In place of tiers: the duct bank, whose pieces are counted by the size of its ducts. */
  bank?: DuctBank;
  /** Ducts that one piece carries side by side. */
  duct_count_per_spacer?: number;
  /** Distance of the first and last station from the ends, for an interval by distance. From 0 ft to 1000 ft. */
  end_offset?: Length;
  /** How far apart the stations stand. */
  interval?: SpacerInterval;
  /** Whether a piece carries a few ducts, a whole tier or the whole bank. */
  piece_system?: PieceSystem;
  /** Ends of this segment whose station belongs to the segment it meets; 0 between manholes. */
  shared_end_count?: number;
  /** Length of a stick, to keep stations clear of the joints. From 0.25 ft to 1000 ft. */
  stick_length?: Length;
  /** Ducts in each tier, the bottom tier first. */
  tiers?: number[];
  /** What closes each stack above the top ducts. */
  top_closure?: TopClosure;
  /** Extra pieces to order, in percent. */
  waste_percent?: number;
}

/** The stations and the pieces. */
export interface SpacersResult {
  /** Base pieces, under the bottom tier. */
  base_spacer_count: number;
  /** Intermediate pieces, between tiers. */
  intermediate_spacer_count: number;
  /** All pieces with waste, rounded up; by size, if they are. */
  order_count: number;
  /** All pieces, before waste. */
  piece_count: number;
  /** Stations along the run. */
  station_count: number;
  /** Pieces that close the stacks from above. */
  top_piece_count: number;
  /** Even distance between stations; none for a single station. */
  actual_spacing?: Length;
  /** The pieces by size, the largest first, if a bank is given. */
  sizes?: SpacersOfSize[];
}

/** An answer of spacers. */
export interface SpacersStreamAnswer {
  /** The answer of `POST /v1/spacers`. */
  answer: SpacersAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: spacers. */
  operation: "spacers";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** How spacers are specified. */
export interface Spacing {
  /** Ducts that one piece carries side by side. */
  duct_count_per_spacer?: number;
  /** Distance of the first and last station from the ends, for an interval by distance. From 0 ft to 1000 ft. */
  end_offset?: Length;
  /** How far apart the stations stand. */
  interval?: SpacerInterval;
  /** Whether a piece carries a few ducts, a whole tier or the whole bank. */
  piece_system?: PieceSystem;
  /** Ends of this segment whose station belongs to the segment it meets; 0 between manholes. */
  shared_end_count?: number;
  /** Length of a stick, to keep stations clear of the joints. From 0.25 ft to 1000 ft. */
  stick_length?: Length;
  /** What closes each stack above the top ducts. */
  top_closure?: TopClosure;
  /** Extra pieces to order, in percent. */
  waste_percent?: number;
}

/** A standard metal box. */
export interface StandardBoxFound {
  /** Its kind; masonry, FS and FD are per gang. */
  kind: StandardBoxKind;
  /** Its size, as printed in inches. */
  size: string;
  /** Its volume. */
  volume: Volume;
}

export const STANDARD_BOX_KIND_VALUES = ["round", "square", "device", "masonry", "fs_single", "fd_single", "fs_multiple", "fd_multiple"] as const;
/** Kinds of standard metal boxes; the volume of some is per gang. Answers may bring others. */
export type StandardBoxKind = (typeof STANDARD_BOX_KIND_VALUES)[number] | (string & {});

export const STANDING_VALUES = ["published", "practice", "memory", "derived", "caller"] as const;
/**
 * What backs a figure: a published source, practice, memory of a source, a derivation, or the caller. Answers
 * may bring others.
 */
export type Standing = (typeof STANDING_VALUES)[number] | (string & {});

/** Depth of cover at one place of the run. */
export interface Station {
  /** Cover over the bank there. From 0 in to 1200 in. */
  cover: Length;
  /** Distance from the start. From 0 ft to 1e+07 ft. */
  station: Length;
}

/** One line of the working; `pointer` is the part of the request it is about. */
export interface Step {
  /** The formula. */
  formula: string;
  /** JSON pointer of the part of the request. */
  pointer: string;
  /** What comes out. */
  quantity: AnyQuantity;
  /** The figures put in, in SI unless they say their unit. */
  substituted: string;
  /** Symbol of what comes out. */
  symbol: string;
}

export const STOP_BASIS_VALUES = ["any_friction", "friction_assumed"] as const;
/**
 * What a stop tension rests on: that no friction loads a bend unseen, or the friction assumed. Answers may bring
 * others.
 */
export type StopBasis = (typeof STOP_BASIS_VALUES)[number] | (string & {});

export const STRAIGHT_LENGTHS_VALUES = ["tangent", "to_intersections"] as const;
/** Where the lengths of straights end: at the bends, or at the intersections of their tangents. */
export type StraightLengths = (typeof STRAIGHT_LENGTHS_VALUES)[number];

/** A straight length of conduit. */
export interface StraightSection {
  /** Fixed text that says: a straight section. */
  kind: "straight";
  /** Length along the conduit. From 0.01 ft to 100000 ft. */
  length: Length;
  /** Conduit of this section, where it differs. */
  conduit?: Conduit;
  /** Coefficient of friction of this section, where it differs. */
  friction_coefficient?: number;
  /**
   * Slope; positive climbs in the direction of the pull. Left out, that with which the last straight or vertical
   * bend ends. From -90 deg to 90 deg.
   */
  grade?: Grade;
}

/** The answer to one line of a stream. */
export type StreamAnswer =
  | AmpacityStreamAnswer
  | ConductorCountStreamAnswer
  | ConduitSizeStreamAnswer
  | CoverStreamAnswer
  | DuctRunStreamAnswer
  | DuctRunComparisonStreamAnswer
  | EarthLoadStreamAnswer
  | EncasementStreamAnswer
  | ExpansionStreamAnswer
  | FillStreamAnswer
  | FlotationStreamAnswer
  | JointsStreamAnswer
  | PermittedUseStreamAnswer
  | PullBoxStreamAnswer
  | PullPlanStreamAnswer
  | PullTensionStreamAnswer
  | SpacersStreamAnswer
  | SupportsStreamAnswer
  | TrenchStreamAnswer
  | VoltageDropStreamAnswer;

/**
 * One line of what a stream gives: the basis first, then an answer or a problem for each line that is not blank,
 * in order, and the summary last; or, where the service ends it before, that it stopped.
 */
export type StreamAnswerLine =
  | StreamAnswer
  | StreamBasis
  | StreamProblem
  | StreamStopped
  | StreamSummary;

/** The first line of a stream: what all its answers rest on. */
export interface StreamBasis {
  /** Version of the service. */
  service_version: string;
  /** Hash of all tables. */
  tables_version: string;
  /** Fixed text that says: basis. */
  type: "basis";
}

/** A line of a stream that has no answer. */
export interface StreamProblem {
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** The problem; its pointers start at the line. */
  problem: Problem;
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: problem. */
  type: "problem";
  /** Id of the question; left out if it had none that could be read. */
  id?: string;
  /** The calculation asked for; left out if it could not be read. */
  operation?: OperationName;
}

/**
 * The last line of a stream that the service ended before its sender did: what was answered counts, and the
 * lines after `line` can be sent again.
 */
export interface StreamStopped {
  /** How many of the questions ended in a problem. */
  failed_count: number;
  /** Lines that were answered, blank ones not counted. */
  item_count: number;
  /** Number of the last line that was looked at. */
  line: number;
  /** `stopping`: this process is being stopped; `idle`: nothing came for too long. */
  reason: string;
  /** Fixed text that says: stopped. */
  type: "stopped";
}

/** The last line of a stream; an answer without it was cut off. */
export interface StreamSummary {
  /** How many of the questions ended in a problem. */
  failed_count: number;
  /** Lines that were answered, blank ones not counted. */
  item_count: number;
  /** Fixed text that says: summary. */
  type: "summary";
}

/** A part of the run in one setting, from the end of the one before it. */
export interface Stretch {
  /** Where it lies. */
  setting: Setting;
  /** Its own bank, in place of that of the run. */
  bank?: DuctBank;
  /** What differs here from the concrete of the run. */
  concrete?: Encasing;
  /** What every duct of the bank is here. */
  conduit?: Conduit;
  /** Type of every duct of the bank here, its size kept. */
  conduit_type?: ConduitType;
  /** What differs here from the digging of the run. */
  digging?: Digging;
  /** Earth and traffic here, in place of the earth_load of the run or laid over it. */
  earth_load?: EarthLoading;
  /** Coefficient of friction here, where it differs. */
  friction_coefficient?: number;
  /** What differs here from the joining of the run. */
  joining?: RunJoining;
  /**
   * Length of one level straight; between ends with a height it is measured to their risers. This or sections.
   * From 0.01 ft to 100000 ft.
   */
  length?: Length;
  /** Its name. */
  name?: string;
  /** The pull point at its end, if one is there. */
  pull_point?: RunPlace;
  /**
   * What differs here from the rating of the run, or the earth from that of the site; its frequency is one for
   * all stretches.
   */
  rating?: EarthRating;
  /** Its straights and bends; these or length. */
  sections?: RunSection[];
  /** What differs here from the spacing of the run. */
  spacing?: Spacing;
  /** Tiers of the same ducts here, where they differ: the ducts go on in order, from the bottom left. */
  tiers?: number[];
}

/** Ducts of one conduit in a stretch, or in a riser of it. */
export interface StretchJoints {
  /** Ducts of this conduit. */
  duct_count: number;
  /** Of one duct along its center line. */
  length: Length;
  /** Its type, where it is given. */
  conduit_type?: ConduitType;
  /** If it is on file how it is joined. */
  joints?: JointsResult;
  /** Where it comes up, if it is a riser. */
  riser?: string;
  /** Length of its sticks, if it is on file how it is joined. */
  stick_length?: Length;
  /** Trade size, where it is given. */
  trade_size?: TradeSize;
}

/** The part of a riser above grade. */
export interface StretchRiser {
  /** What stands above it. */
  name: string;
  /** If temperatures are given. */
  expansion?: ExpansionResult;
  /** If a rule is on file. */
  supports?: SupportsResult;
}

/** The uses of one type of conduit in a stretch. */
export interface StretchUse {
  /** Type of the conduit. */
  conduit_type: ConduitType;
  /** What is said of each use. */
  uses: JudgedUse[];
  /** Of all its uses together. */
  verdict: Verdict;
}

export const STRUCTURE_VALUES = ["pull_box", "handhole", "manhole"] as const;
/** What conductors are pulled through. Answers may bring others. */
export type Structure = (typeof STRUCTURE_VALUES)[number] | (string & {});

/** A joint of the structure that the run lies on. */
export interface StructureJoint {
  /** By how much it opens and closes in all. From 0 in to 60 in. */
  movement: Length;
  /** Distance from the start of the stretch. From 0 ft to 100000 ft. */
  position: Length;
}

export const SUPPORT_KIND_VALUES = ["strap", "hanger"] as const;
/** What holds conduit above ground. */
export type SupportKind = (typeof SUPPORT_KIND_VALUES)[number];

/** A conduit with a rule of support spacing, by type and trade size. */
export interface SupportedConduit {
  /** Fixed text that says: by type and trade size. */
  kind: "listed";
  /** Trade size, as the trade writes it. */
  trade_size: TradeSize;
  /** Type of conduit. */
  type: SupportedConduitType;
  /** How the lengths are coupled, of rmc and imc alone. */
  coupling?: Coupling;
}

export const SUPPORTED_CONDUIT_TYPE_VALUES = ["pvc_schedule_40", "pvc_schedule_80", "rtrc", "rmc", "imc", "emt", "fmc", "lfmc", "lfnc_a", "lfnc_b", "ent"] as const;
/** Conduit with a rule of support spacing on file. */
export type SupportedConduitType = (typeof SUPPORTED_CONDUIT_TYPE_VALUES)[number];

/** The answer of supports with everything that defends it. */
export interface SupportsAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: SupportsResult;
  /** The request with every default filled in, if asked for. */
  request?: SupportsRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of supports. */
export interface SupportsItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: supports. */
  operation: "supports";
  /** The body of `POST /v1/supports`. */
  request: SupportsRequest;
}

/** An answer of supports. */
export interface SupportsItemAnswer {
  /** The answer of `POST /v1/supports`. */
  answer: SupportsAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: supports. */
  operation: "supports";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** A straight run above ground. */
export interface SupportsRequest {
  /** The conduit. */
  conduit: SupportedConduit;
  /** Length of the run above ground, between boxes, fittings or other terminations. From 0.01 ft to 100000 ft. */
  length: Length;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /**
   * Distance of the end straps from the terminations, at most what the rule of the conduit allows. From 0 ft to
   * 1000 ft.
   */
  end_distance?: Length;
  /**
   * Expansion fittings of the run, which then lies between two fixed points; without them the straps are those
   * of a run that needs none.
   */
  fittings?: Fittings;
  /** Ends of the run at a box or other termination; with one, the run goes on. */
  termination_count?: number;
}

/** How far apart, how many and where. */
export interface SupportsResult {
  /** Where the run is fixed between them; its ends are fixed. */
  anchor_positions: Length[];
  /** Distance of the first strap from its termination. */
  end_distance: Length;
  /** Where the barrels of the fittings given are clamped. */
  fitting_positions: Length[];
  /**
   * Supports that hold: with fittings the clamps of their barrels, and anchors without barrels; of metal and
   * flexible conduit without fittings all. All others let the run slide.
   */
  holding_strap_positions: Length[];
  /** Where the pistons of the fittings end when fully open, in the order of fitting_positions. */
  piston_reaches: Length[];
  /** Where the supports stand along the run. */
  positions: Length[];
  /** Straps of the run. */
  support_count: number;
  /** Most that supports may stand apart, as printed. */
  support_spacing: Length;
  /** Widest distance between straps; none for a single one. */
  actual_spacing?: Length;
}

/** An answer of supports. */
export interface SupportsStreamAnswer {
  /** The answer of `POST /v1/supports`. */
  answer: SupportsAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: supports. */
  operation: "supports";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** All lines in the order of building, and their total by the caller's rates. */
export interface Takeoff {
  /** The lines, by group and item. */
  lines: TakeoffLine[];
  /** If rates were given. */
  total?: TakeoffTotal;
}

export const TAKEOFF_GROUP_VALUES = ["site_work", "duct", "bank", "backfill", "supports", "cable"] as const;
/** Groups of a takeoff, in the order of building. Answers may bring others. */
export type TakeoffGroup = (typeof TAKEOFF_GROUP_VALUES)[number] | (string & {});

export const TAKEOFF_ITEM_VALUES = ["pavement_sawcut", "pavement_removal", "excavation", "shoring", "bore", "bore_pit", "conduit", "elbow", "field_bend", "coupling", "expansion_fitting", "terminal_adapter", "conduit_body", "end_bell", "duct_plug", "cap", "wall_penetration", "joint", "fusion_joint", "solvent_cement", "primer", "base_spacer", "intermediate_spacer", "top_spacer", "tie_down", "reinforcing_bar", "tie_bar", "form", "concrete", "bank_ground", "bedding", "select_fill", "import", "native_backfill", "warning_tape", "spoil", "haul_load", "pavement_restoration", "strap", "hanger", "mandrel_pass", "pull_cord", "lubricant", "cable", "cable_reel", "pulling_eye", "cable_support"] as const;
/** What a line of a takeoff is of, in the order of its group. Answers may bring others. */
export type TakeoffItem = (typeof TAKEOFF_ITEM_VALUES)[number] | (string & {});

/** One line: an item of one conduit type and size with all that the run takes of it. */
export interface TakeoffLine {
  /** Arithmetic of the exact quantity in one line. */
  basis: string;
  /** The item in words. */
  description: string;
  /** What is laid, dug or done, without waste. */
  exact_quantity: TakeoffQuantity;
  /** The part of the work it belongs to. */
  group: TakeoffGroup;
  /** What it is a line of. */
  item: TakeoffItem;
  /** Number of the line, from 1. */
  line: number;
  /** JSON pointer of the figure in this answer that it comes from. */
  pointer: string;
  /** The exact quantity by stretch, in their order. */
  shares: TakeoffShare[];
  /** Angle of an elbow or a field bend. */
  angle?: Angle;
  /** Type of the conduit. */
  conduit_type?: ConduitType;
  /** Labor hours of the exact quantity, by the caller's rate. */
  labor_hours?: number;
  /** How a volume of earth is measured. */
  measure?: VolumeMeasure;
  /** What is ordered, in whole packages; absent for work without an order. */
  order_quantity?: TakeoffQuantity;
  /** What it comes in, such as a stick of 10 ft. */
  package?: string;
  /** Packages that are ordered. */
  package_count?: number;
  /** By the caller's rate, to the cent: of the order, else of the exact quantity. */
  price?: number;
  /** Radius of an elbow or a field bend. */
  radius?: Length;
  /** Trade size, conductor size or bar size; of pavement its kind. A rate matches by it. */
  size?: string;
  /** The caller's rate, for one of the unit of the line. */
  unit_labor_hours?: number;
  /** The caller's rate, for one of the unit of the line. */
  unit_price?: number;
  /** Waste that is in the order. */
  waste_percent?: number;
}

/** A quantity with the unit in which it is sold, paid or done. */
export interface TakeoffQuantity {
  /** The unit. */
  unit: TakeoffUnit;
  /** The number, in the unit. */
  value: number;
}

/** What of the exact quantity one stretch of the run takes. */
export interface TakeoffShare {
  /** How much of it. */
  quantity: TakeoffQuantity;
  /** Name of the stretch. */
  stretch: string;
}

/** What the caller's rates come to; a total with gaps says so. */
export interface TakeoffTotal {
  /** Whether every line has a price. */
  complete: boolean;
  /** Lines without a rate of labor hours. */
  lines_without_hours: number[];
  /** Lines that have no price, of work too. */
  unpriced_lines: number[];
  /** Labor hours of all lines with a rate. */
  labor_hours?: number;
  /** Price of all priced lines, to the cent. */
  price?: number;
}

export const TAKEOFF_UNIT_VALUES = ["each", "ft", "m", "ft2", "m2", "yd3", "m3", "gal_us", "qt_us", "L", "lb", "kg"] as const;
/** Units of a takeoff: of counts each, of all else as they are sold or paid. Answers may bring others. */
export type TakeoffUnit = (typeof TAKEOFF_UNIT_VALUES)[number] | (string & {});

/** A temperature with its unit. */
export interface Temperature {
  /** The unit, by its code. */
  unit: TemperatureUnit;
  /** The number, in the unit. */
  value: number;
}

/** A difference between two temperatures with its unit. */
export interface TemperatureDifference {
  /** The unit, by its code. */
  unit: TemperatureDifferenceUnit;
  /** The number, in the unit. */
  value: number;
}

export const TEMPERATURE_DIFFERENCE_UNIT_VALUES = ["delta_degC", "delta_degF"] as const;
/** Units of a difference between two temperatures. */
export type TemperatureDifferenceUnit = (typeof TEMPERATURE_DIFFERENCE_UNIT_VALUES)[number];

/** The lowest and highest temperature of the conduit itself, which in the sun is not that of the air. */
export interface TemperatureRange {
  /** Highest temperature. From -100 degF to 400 degF. */
  highest: Temperature;
  /** Fixed text that says: by lowest and highest. */
  kind: "range";
  /** Lowest temperature. From -100 degF to 400 degF. */
  lowest: Temperature;
  /** Whether the run lies in direct sun and the highest temperature does not include that yet. */
  direct_sun?: boolean;
  /**
   * Temperature of the conduit when the fitting is set; needed for the piston opening. From -100 degF to 400
   * degF.
   */
  installation?: Temperature;
  /** What direct sun adds to the highest temperature. From 0 delta_degF to 100 delta_degF. */
  sun_allowance?: TemperatureDifference;
}

/** The difference between the highest and lowest temperature of the conduit, sun included. */
export interface TemperatureSpread {
  /** Highest less lowest temperature. From 0.1 delta_degF to 500 delta_degF. */
  difference: TemperatureDifference;
  /** Fixed text that says: by the difference. */
  kind: "difference";
}

export const TEMPERATURE_UNIT_VALUES = ["degC", "degF", "K"] as const;
/** Units of temperature, each with its own zero. */
export type TemperatureUnit = (typeof TEMPERATURE_UNIT_VALUES)[number];

/** The temperatures the conduit passes through: lowest and highest, or their difference. */
export type Temperatures =
  | TemperatureSpread
  | TemperatureRange;

export const TERMINAL_RATING_VALUES = ["unmarked", "60_degc", "75_degc", "90_degc"] as const;
/**
 * Temperatures that terminals are marked for. Unmarked ones are taken for 60 degC to 100 A of the overcurrent
 * device or, without one, of the current, and for 75 degC above; where neither is given, for 60 degC to 1 AWG.
 */
export type TerminalRating = (typeof TERMINAL_RATING_VALUES)[number];

/** A thermal resistance of a length, as of a metre or a foot of a layer, with its unit. */
export interface ThermalResistance {
  /** The unit, by its code. */
  unit: ThermalResistanceUnit;
  /** The number, in the unit. */
  value: number;
}

export const THERMAL_RESISTANCE_UNIT_VALUES = ["K.m/W", "degC.ft/W"] as const;
/** Units of thermal resistance of a length; the trade in the US says it in thermal ohm-feet. */
export type ThermalResistanceUnit = (typeof THERMAL_RESISTANCE_UNIT_VALUES)[number];

/** A thermal resistivity with its unit. */
export interface ThermalResistivity {
  /** The unit, by its code. */
  unit: ThermalResistivityUnit;
  /** The number, in the unit. */
  value: number;
}

export const THERMAL_RESISTIVITY_UNIT_VALUES = ["K.m/W", "degC.cm/W"] as const;
/** Units of thermal resistivity; the trade in the US says its rho in degC.cm/W. */
export type ThermalResistivityUnit = (typeof THERMAL_RESISTIVITY_UNIT_VALUES)[number];

/** Like ducts of one tier in wet concrete. */
export interface TierInPour {
  /** Wet concrete over the bottom of its ducts. */
  head: Length;
  /** Outside diameter of one of the ducts. */
  outside_diameter: Length;
  /** Place of their conduit in the request, the first of like ones. */
  pointer: string;
  /** Pressure of the wet concrete at the bottom of the ducts. */
  pressure: Pressure;
  /** Tier, from 1 at the bottom. */
  tier: number;
  /** Whether the ducts, as free rings, bear the pressure of the wet concrete. */
  verdict: Verdict;
  /** Pressure that the ducts bear, safety included, where that is on file. */
  allowable_pressure?: Pressure;
  /** Type of the conduit, where it is given. */
  conduit_type?: ConduitType;
  /** Trade size, where it is given. */
  trade_size?: TradeSize;
}

/** Like ducts of one tier under earth and traffic; what a wall or a load not on file leaves open is absent. */
export interface TierUnderLoad {
  /** Whether the ducts bear buckling_load. */
  buckling_verdict: Verdict;
  /** Earth over the top of its ducts. */
  cover: Length;
  /** Whether the limit of deflection is kept. */
  deflection_verdict: Verdict;
  /** Pressure of earth taken for deflection, that of earth_load_method. */
  earth_pressure: Pressure;
  /** Pressure of traffic, by every method asked that goes so shallow. */
  live_loads: LiveLoadByMethod[];
  /** Outside diameter of one of the ducts. */
  outside_diameter: Length;
  /** Place of their conduit in the request, the first of like ones. */
  pointer: string;
  /** Pressure of the prism of earth above a duct. */
  prism_pressure: Pressure;
  /** Tier, from 1 at the bottom. */
  tier: number;
  /** Whether the wall bears its compression. */
  wall_verdict: Verdict;
  /** What the ducts bear before they buckle, safety included. */
  allowable_buckling_load?: Pressure;
  /** Water, earth and traffic that press from around. */
  buckling_load?: Pressure;
  /** Type of the conduit, where it is given. */
  conduit_type?: ConduitType;
  /** Least inside diameter of a duct flattened by deflection_percent, where the bore is on file. */
  deflected_bore?: Length;
  /** By how much their vertical diameter shrinks. */
  deflection_percent?: number;
  /** Method that gives the largest pressure of traffic; absent without traffic. */
  governing_method?: LiveLoadMethod;
  /** The high end of what the formula stands for. */
  highest_deflection_percent?: number;
  /**
   * Least inside diameter of a duct flattened by highest_deflection_percent: what a mandrel and the jam of
   * cables are held against.
   */
  least_bore?: Length;
  /** Largest pressure of traffic of the methods asked; absent where none was judged. */
  live_pressure?: Pressure;
  /** The low end of what the formula stands for. */
  lowest_deflection_percent?: number;
  /** Stiffness of its ducts at 5 percent deflection. */
  pipe_stiffness?: Pressure;
  /** Trade size, where it is given. */
  trade_size?: TradeSize;
  /** Pressure of earth that arches in its trench, where the width is given. */
  trench_pressure?: Pressure;
  /** Compression of the wall. */
  wall_stress?: Pressure;
  /** Thrust in the wall. */
  wall_thrust?: ForcePerLength;
}

/** Like ducts of one tier. */
export interface TierUplift {
  /** Ducts of this kind in the tier. */
  duct_count: number;
  /** Of one duct; negative if it sinks. */
  duct_uplift_per_length: ForcePerLength;
  /** Of one empty duct. */
  mass_per_length: MassPerLength;
  /** Outside diameter of one duct. */
  outside_diameter: Length;
  /** Tier, from 1 at the bottom. */
  tier: number;
  /** Of these ducts together. */
  uplift_per_length: ForcePerLength;
}

export const TOP_CLOSURE_VALUES = ["none", "cap", "strap", "intermediate", "base"] as const;
/** What closes a spacer stack above the top ducts. */
export type TopClosure = (typeof TOP_CLOSURE_VALUES)[number];

export const TRADE_SIZE_VALUES = ["3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6"] as const;
/** Trade sizes of conduit; a name, not a dimension. Answers may bring others. */
export type TradeSize = (typeof TRADE_SIZE_VALUES)[number] | (string & {});

export const TRAFFIC_VALUES = ["none", "h_20"] as const;
/** What passes over a duct. */
export type Traffic = (typeof TRAFFIC_VALUES)[number];

/** What fittings of one travel that is sold would mean. */
export interface TravelOption {
  /** Fittings of that travel that the run needs. */
  fitting_count: number;
  /** Travel of one fitting. */
  fitting_travel: Length;
}

/** The answer of trench with everything that defends it. */
export interface TrenchAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: TrenchResult;
  /** The request with every default filled in, if asked for. */
  request?: TrenchRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of trench. */
export interface TrenchItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: trench. */
  operation: "trench";
  /** The body of `POST /v1/trench`. */
  request: TrenchRequest;
}

/** An answer of trench. */
export interface TrenchItemAnswer {
  /** The answer of `POST /v1/trench`. */
  answer: TrenchAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: trench. */
  operation: "trench";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const TRENCH_PRACTICE_VALUES = ["formed", "trench_formed", "direct_buried"] as const;
/** Practices of laying a bank in its trench. */
export type TrenchPractice = (typeof TRENCH_PRACTICE_VALUES)[number];

/** A bank in its trench. */
export interface TrenchRequest {
  /** The duct bank. */
  bank: DuctBank;
  /** Length of the trench. From 0.01 ft to 100000 ft. */
  length: Length;
  /** Bedding under the bank. From 0 in to 1200 in. */
  bedding?: Length;
  /** Widths of the buckets at hand: the floor is as wide as the narrowest that digs the width wanted. */
  bucket_widths?: Length[];
  /** Compacted volume of one in the bank, in place of the soil's. */
  compacted_volume_factor?: number;
  /** Concrete outside the ducts, unless they are buried directly. */
  concrete_cover?: ConcreteCover;
  /** Earth over the envelope, or over the ducts if there is none; this or stations. From 0 in to 1200 in. */
  cover?: Length;
  /**
   * Fall of the ducts below level ground, from where cover is given, the least of it; without it the ducts lie
   * as the ground does.
   */
  fall?: Fall;
  /** What one truck hauls, loose. From 0.1 yd3 to 100 yd3. */
  haul_capacity?: Volume;
  /** Least width of the bottom where ducts are buried directly and width is left out. From 1 in to 1200 in. */
  least_width?: Length;
  /** Loose volume of one in the bank, in place of the soil's. */
  loose_volume_factor?: number;
  /** Clear distance to the nearest other utility. From 0 in to 1200 in. */
  nearest_utility?: Length;
  /** The pavement over the trench, if there is any. */
  pavement?: Pavement;
  /** Whether a formed pour fills the bounding rectangle or steps with the tiers. */
  pour_shape?: PourShape;
  /** How the bank lies in its trench. */
  practice?: TrenchPractice;
  /** Select fill over the bank, before native backfill. From 0 in to 1200 in. */
  select_fill?: Length;
  /** Side of the trench, horizontal for one vertical. */
  side_slope_ratio?: number;
  /** What is dug, for its volumes. */
  soil?: SoilKind;
  /** Soil type of the excavation rules, by the competent person. */
  soil_type?: ExcavationSoilType;
  /** Cover along the run where it varies, from its start to its end; this or cover. */
  stations?: Station[];
  /** Extra warning tape. */
  tape_overlap_percent?: number;
  /** Warning tape below grade; under a pavement that is thicker it lies right under that. From 0 in to 1200 in. */
  warning_tape_depth?: Length;
  /** Width of the bottom, in place of practice. From 1 in to 1200 in. */
  width?: Length;
  /**
   * Room beside the bank on each side, where width is left out and the trench is not the form. From 0 in to 240
   * in.
   */
  working_space?: Length;
}

/** Size and volumes; bank, loose and compacted are named as such. */
export interface TrenchResult {
  /** Native, compacted, up to grade or pavement. */
  backfill_volume: Volume;
  /** Compacted, under the bank. */
  bedding_volume: Volume;
  /** Depth to the bottom; the greatest, if it varies. */
  depth: Length;
  /** Height of the concrete, or of the bare ducts. */
  envelope_height: Length;
  /** What the envelope, or the ducts, take. */
  envelope_volume: Volume;
  /** Width of the concrete, or of the ducts alone; its bottom in a sloped trench. */
  envelope_width: Length;
  /** Earth in the bank, below any pavement. */
  excavation_volume: Volume;
  /** Truck loads of earth hauled away, or brought; none of pavement. */
  haul_load_count: number;
  /** Loose, to bring; 0 if what was dug is enough. */
  import_volume: Volume;
  /** The shortest way from the top of the ducts themselves to grade, where it is least. */
  least_cover_over_ducts: Length;
  /** Below grade, where the cover is least and may leave no room for more. */
  least_warning_tape_depth: Length;
  /** All that is dug, loose. */
  loose_excavation_volume: Volume;
  /** What the cover is measured between. */
  measured_from: string;
  /** Compacted, beside and over the bank. */
  select_fill_volume: Volume;
  /** Both sides, where so deep and steep that they are to be protected; 0 where nowhere. */
  shoring_area: Area;
  /** Loose, to haul away; 0 if fill must be brought. */
  spoil_volume: Volume;
  /** Below grade, where the cover is greatest. */
  warning_tape_depth: Length;
  /** Tape over the run. */
  warning_tape_length: Length;
  /** Width of the bottom. */
  width: Length;
  /** From the highest of the ducts to the lowest, if they fall. */
  fall_height?: Length;
  /** Cut, taken up and laid again, if any. */
  pavement?: PavementTakeoff;
}

/** An answer of trench. */
export interface TrenchStreamAnswer {
  /** The answer of `POST /v1/trench`. */
  answer: TrenchAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: trench. */
  operation: "trench";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const TURN_VALUES = ["left", "right"] as const;
/** To which side a bend turns, looking from start to end. */
export type Turn = (typeof TURN_VALUES)[number];

/** One unit code: SI value = factor x value + offset; a grade in percent is the arc tangent of that. */
export interface UnitRow {
  /** What it measures, such as mass_per_length. */
  dimension: string;
  /** What a value is multiplied by. */
  si_factor: number;
  /** What is added then. */
  si_offset: number;
  /** SI unit of the dimension. */
  si_unit: string;
  /** UCUM code. */
  ucum: string;
  /** The code, as a request and an answer write it. */
  unit: string;
}

export const UNIT_SYSTEM_VALUES = ["us", "metric"] as const;
/** Units of the answer: US customary or metric. */
export type UnitSystem = (typeof UNIT_SYSTEM_VALUES)[number];

/** Unit codes, with the hash of all tables. */
export interface UnitTable {
  /** The rows, as the source has them. */
  rows: UnitRow[];
  /** Hash of all reference tables. */
  tables_version: string;
}

/** A violation that no remedy told removes. */
export interface UnremediedViolation {
  /** Its code. */
  code: string;
  /** Why there is none: nothing known to try, or tried in vain. */
  message: string;
  /** How many changes were tried against it. */
  trial_count: number;
  /** Where it is in the request that was sent. */
  pointer?: string;
}

export const VERDICT_VALUES = ["complies", "violates", "not_judged"] as const;
/**
 * What an answer, or a part of it, says of the limits: kept, broken, or not judged for want of something.
 * Answers may bring others.
 */
export type Verdict = (typeof VERDICT_VALUES)[number] | (string & {});

/** A bend in a vertical plane; the slope rises through a sag and falls over a crest. */
export interface VerticalBendSection {
  /** Slope where the cable leaves; positive climbs. From -90 deg to 90 deg. */
  exit_grade: Grade;
  /** Fixed text that says: a bend in a vertical plane. */
  kind: "vertical_bend";
  /** Radius to the center line. From 0.5 in to 120000 in. */
  radius: Length;
  /** Conduit of this section, where it differs. */
  conduit?: Conduit;
  /**
   * Slope where the cable enters; positive climbs. Left out, that with which the last straight or vertical bend
   * ends. From -90 deg to 90 deg.
   */
  entry_grade?: Grade;
  /** Coefficient of friction of this section, where it differs. */
  friction_coefficient?: number;
  /** Whether it is bought or bent on site. */
  made?: BendMade;
}

/** A voltage with its unit. */
export interface Voltage {
  /** The unit, by its code. */
  unit: VoltageUnit;
  /** The number, in the unit. */
  value: number;
}

export const VOLTAGE_CLASS_VALUES = ["up_to_1000_v", "over_1_kv_to_22_kv", "over_22_kv_to_40_kv", "over_40_kv"] as const;
/** Classes of voltage. */
export type VoltageClass = (typeof VOLTAGE_CLASS_VALUES)[number];

/** The answer of voltage-drop with everything that defends it. */
export interface VoltageDropAnswer {
  /** What was taken for members that were left out. */
  assumptions: Assumption[];
  /** The versions and sources that the answer rests on. */
  basis: Basis;
  /** The usual cautions of the work, whatever the figures. */
  cautions: Caution[];
  /** What is broken, unwise or worth a note; often none. */
  findings: Finding[];
  /** What the answer is not: show it wherever its figures are shown. */
  notice: string;
  /** What was calculated. */
  result: VoltageDropResult;
  /** The request with every default filled in, if asked for. */
  request?: VoltageDropRequest;
  /** What the answer says of its limits; absent where nothing was held against one. */
  verdict?: Verdict;
  /** How it was worked out, step by step, if asked for. */
  working?: Step[];
}

/** A question of voltage_drop. */
export interface VoltageDropItem {
  /** Any text of the caller's, given back with the answer. */
  id: string;
  /** Fixed text that says: voltage drop. */
  operation: "voltage_drop";
  /** The body of `POST /v1/voltage-drop`. */
  request: VoltageDropRequest;
}

/** An answer of voltage_drop. */
export interface VoltageDropItemAnswer {
  /** The answer of `POST /v1/voltage-drop`. */
  answer: VoltageDropAnswer;
  /** Id of the question. */
  id: string;
  /** Fixed text that says: voltage drop. */
  operation: "voltage_drop";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

/** A circuit and its length. */
export interface VoltageDropRequest {
  /** One conductor of the circuit, or the cable that has them all. */
  cable: Cable;
  /** From the source to the load, one way. From 0.01 ft to 100000 ft. */
  length: Length;
  /** At the source: between lines, or between the two wires. From 1 V to 50 kV. */
  voltage: Voltage;
  /**
   * Apparent power of the load at the voltage of the source; this, current or power. From 1e-05 kVA to 1e+06
   * kVA.
   */
  apparent_power?: ApparentPower;
  /** Edition of NFPA 70 to follow. */
  code_edition?: CodeEdition;
  /** Temperature of the conductors under load. From -40 degC to 250 degC. */
  conductor_temperature?: Temperature;
  /** Conduit the circuit lies in, as Table 9 tells them apart. */
  conduit_material?: CircuitConduit;
  /** Current of the circuit, all its sets together; this, power or apparent_power. From 0.001 A to 20 kA. */
  current?: Current;
  /** At this load, to tell what is lost in a year. From 0 h to 8784 h. */
  duration_per_year?: Duration;
  /** Of the alternating current; the printed reactance is for 60 Hz and goes with it. From 10 Hz to 400 Hz. */
  frequency?: Frequency;
  /** Most that may be lost. */
  limit_percent?: number;
  /** Sets in parallel. */
  parallel_count?: number;
  /** Power of the load at the voltage of the source; this, current or apparent_power. From 0.01 W to 1e+06 kW. */
  power?: Power;
  /** Of the load, which lags; of direct current there is none. */
  power_factor?: number;
  /** Of one conductor to neutral, in place of the table's. From 0 ohm/1000ft to 1000 ohm/1000ft. */
  reactance?: ResistancePerLength;
  /** Of one conductor at its temperature, in place of the table's. From 0.0001 ohm/1000ft to 1000 ohm/1000ft. */
  resistance?: ResistancePerLength;
  /** Three phases between lines, or two wires. */
  system?: CircuitSystem;
}

/** What is lost, and what keeps within the limit. */
export interface VoltageDropResult {
  /** Of the circuit, all its sets together. */
  current: Current;
  /** Between lines, or between the two wires: exactly, by phasors. */
  drop: Voltage;
  /** Of the voltage at the source. */
  drop_percent: number;
  /** What it is held against. */
  limit_percent: number;
  /** What is left at the load. */
  load_voltage: Voltage;
  /** Heat of all conductors. */
  loss: Power;
  /** Of one conductor to neutral. */
  reactance: ResistancePerLength;
  /** Of one conductor. */
  resistance: ResistancePerLength;
  /** As the tables have it: effective impedance times current and length. */
  table_drop: Voltage;
  /** Of the voltage at the source. */
  table_drop_percent: number;
  /** In a year, if duration_per_year is given. */
  energy_loss?: Energy;
  /** Within the limit, one way; absent where the longest run that may be given keeps it. */
  longest_length?: Length;
  /**
   * Within the limit, and carrying the current by the tables at unmarked terminals and with this insulation in a
   * wet place. Where the power factor is the one at which the most is lost, each size is held to its own.
   */
  smallest_size?: ConductorSize;
}

/** An answer of voltage_drop. */
export interface VoltageDropStreamAnswer {
  /** The answer of `POST /v1/voltage-drop`. */
  answer: VoltageDropAnswer;
  /** Id of the question. */
  id: string;
  /** Number of the line, from 1, blank lines counted. */
  line: number;
  /** Fixed text that says: voltage drop. */
  operation: "voltage_drop";
  /** HTTP status the question would have had by itself. */
  status: number;
  /** Fixed text that says: answer. */
  type: "answer";
}

export const VOLTAGE_UNIT_VALUES = ["V", "kV"] as const;
/** Units of voltage. */
export type VoltageUnit = (typeof VOLTAGE_UNIT_VALUES)[number];

/** A volume with its unit. */
export interface Volume {
  /** The unit, by its code. */
  unit: VolumeUnit;
  /** The number, in the unit. */
  value: number;
}

export const VOLUME_MEASURE_VALUES = ["bank", "loose", "compacted"] as const;
/**
 * How a volume of earth is measured: in the bank, loose, or compacted; never mixed in one line. Answers may
 * bring others.
 */
export type VolumeMeasure = (typeof VOLUME_MEASURE_VALUES)[number] | (string & {});

export const VOLUME_UNIT_VALUES = ["L", "m3", "in3", "ft3", "yd3", "qt_us", "gal_us"] as const;
/** Units of volume. */
export type VolumeUnit = (typeof VOLUME_UNIT_VALUES)[number];

export const WALL_MATERIAL_VALUES = ["pvc", "hdpe", "rtrc", "fiber", "asbestos_cement", "earthenware", "aluminum", "steel"] as const;
/** What a duct is made of, for the heat that crosses it. */
export type WallMaterial = (typeof WALL_MATERIAL_VALUES)[number];

export const WEIGHT_CORRECTION_USE_VALUES = ["straights_and_bends", "straights_only"] as const;
/** Two readings of the weight correction: in the bend exponent as well, or on straights alone. */
export type WeightCorrectionUse = (typeof WEIGHT_CORRECTION_USE_VALUES)[number];

export const WIRING_METHOD_VALUES = ["direct_buried_cable", "rmc_imc", "nonmetallic_raceway", "gfci_residential", "low_voltage_control"] as const;
/** What is buried, for its cover. */
export type WiringMethod = (typeof WIRING_METHOD_VALUES)[number];

/** What would keep every limit of this calculation with all else as it is; absent where nothing would. */
export interface WouldComply {
  /** Greatest cover, in whole inches; absent where 100 ft comply. */
  greatest_cover?: Length;
  /** Least class of direct-burial duct, of the same trade sizes. */
  least_class?: ConduitType;
  /** Least compaction of the embedment asked. */
  least_compaction?: Compaction;
  /** Least cover, in whole inches; all from it to the greatest comply. */
  least_cover?: Length;
  /** Least stiffness; absent where wall, cover or flotation would not be kept. */
  least_pipe_stiffness?: Pressure;
}
