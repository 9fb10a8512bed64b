// Written by `make clients` from the contract: change the contract, not this file.

import type * as models from "./models.js";

/** What every call takes beside its question. */
export interface Options {
  /** Ends the call, and the wait before another try. */
  signal?: AbortSignal;
}

export interface CalculationOptions extends Options {
  /** Units of the answer. */
  units?: models.UnitSystem;
  /** Whether to add the working, step by step. */
  working?: boolean;
  /** Whether defaults are stated or refused. */
  assumptions?: models.AssumptionPolicy;
  /** Whether the answer gives the request back, completed. */
  request?: models.RequestBack;
}

export interface RemedyingOptions extends Options {
  /** Units of the answer. */
  units?: models.UnitSystem;
  /** Whether to add the working, step by step. */
  working?: boolean;
  /** Whether defaults are stated or refused. */
  assumptions?: models.AssumptionPolicy;
  /** Whether the answer gives the request back, completed. */
  request?: models.RequestBack;
  /**
   * Whether to add, where a limit is broken, what would keep it: the request changed in one thing, and tried; of
   * a whole run alone.
   */
  remedies?: boolean;
}

export interface DocumentOptions extends Options {
  /** Units of the answer. */
  units?: models.UnitSystem;
  /** Whether to add the working, step by step. */
  working?: boolean;
  /** Whether defaults are stated or refused. */
  assumptions?: models.AssumptionPolicy;
}

export interface DuctRunDocumentOptions extends Options {
  /** Units of the answer. */
  units?: models.UnitSystem;
  /** Whether to add the working, step by step. */
  working?: boolean;
  /** Whether defaults are stated or refused. */
  assumptions?: models.AssumptionPolicy;
  /** Which page of the answer as text/html; no other form takes it. */
  page?: models.Page;
}

export interface ListConduitsOptions extends Options {
  /** Type of the conduit. */
  type?: models.ConduitType;
  /** Trade size. */
  trade_size?: models.TradeSize;
  /** Units of the rows, each as printed in them. */
  units?: models.UnitSystem;
}

export interface ListConductorsOptions extends Options {
  /** Table of Chapter 9. A value that no row carries is refused with those that rows do carry. */
  table?: string;
  /** A marking the row serves; or bare. */
  insulation?: models.ConductorMarking;
  /** Size of the conductor. */
  size?: models.ConductorSize;
  /** Make-up, where the table tells. A value that no row carries is refused with those that rows do carry. */
  stranding?: string;
  /** Units of the rows, each as printed in them. */
  units?: models.UnitSystem;
}

export interface ListMaterialsOptions extends Options {
  /** Material of the conduit. */
  material?: models.ConduitMaterial;
  /** Units of the rows, each as printed in them. */
  units?: models.UnitSystem;
}

export interface ListFrictionOptions extends Options {
  /**
   * Jacket of the cable, as the source names it. A value that no row carries is refused with those that rows do
   * carry.
   */
  jacket?: string;
  /** Conduit, as the source names it. A value that no row carries is refused with those that rows do carry. */
  conduit?: string;
  /** How the cable was lubricated. A value that no row carries is refused with those that rows do carry. */
  lubrication?: string;
}

export interface ListUnitsOptions extends Options {
  /** Dimension of the unit. A value that no row carries is refused with those that rows do carry. */
  dimension?: string;
  /** Unit code. A value that no row carries is refused with those that rows do carry. */
  unit?: string;
}

export interface ListSourcesOptions extends Options {
  /**
   * Id by which rows and findings name the document. A value that no row carries is refused with those that rows
   * do carry.
   */
  source_id?: string;
}

/** What is asked for an answer in another form, by the path of its calculation. */
export interface Documents {
  "/v1/duct-run": {
    mediaType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet" | "image/svg+xml" | "text/csv" | "text/html";
    request: models.DuctRunRequest;
    options: DuctRunDocumentOptions;
  };
  "/v1/duct-run/compare": {
    mediaType: "text/html";
    request: models.DuctRunComparisonRequest;
    options: DocumentOptions;
  };
  "/v1/permitted-use": {
    mediaType: "text/html";
    request: models.PermittedUseRequest;
    options: DocumentOptions;
  };
  "/v1/conduit-size": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.ConduitSizeRequest;
    options: DocumentOptions;
  };
  "/v1/fill": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.FillRequest;
    options: DocumentOptions;
  };
  "/v1/conductor-count": {
    mediaType: "text/html";
    request: models.ConductorCountRequest;
    options: DocumentOptions;
  };
  "/v1/cover": {
    mediaType: "text/html";
    request: models.CoverRequest;
    options: DocumentOptions;
  };
  "/v1/trench": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.TrenchRequest;
    options: DocumentOptions;
  };
  "/v1/spacers": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.SpacersRequest;
    options: DocumentOptions;
  };
  "/v1/encasement": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.EncasementRequest;
    options: DocumentOptions;
  };
  "/v1/flotation": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.FlotationRequest;
    options: DocumentOptions;
  };
  "/v1/earth-load": {
    mediaType: "text/html";
    request: models.EarthLoadRequest;
    options: DocumentOptions;
  };
  "/v1/joints": {
    mediaType: "text/html";
    request: models.JointsRequest;
    options: DocumentOptions;
  };
  "/v1/expansion": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.ExpansionRequest;
    options: DocumentOptions;
  };
  "/v1/supports": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.SupportsRequest;
    options: DocumentOptions;
  };
  "/v1/pull-box": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.PullBoxRequest;
    options: DocumentOptions;
  };
  "/v1/pull-plan": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.PullPlanRequest;
    options: DocumentOptions;
  };
  "/v1/pull-tension": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.PullTensionRequest;
    options: DocumentOptions;
  };
  "/v1/ampacity": {
    mediaType: "image/svg+xml" | "text/html";
    request: models.AmpacityRequest;
    options: DocumentOptions;
  };
  "/v1/voltage-drop": {
    mediaType: "text/html";
    request: models.VoltageDropRequest;
    options: DocumentOptions;
  };
}

/** A method for every operation. */
export abstract class Calls {
  protected abstract ask(method: string, path: string, body: unknown, options: Options): Promise<unknown>;

  /** A whole run. */
  ductRun(request: models.DuctRunRequest, options: RemedyingOptions = {}): Promise<models.DuctRunAnswer> {
    return this.ask("POST", "/v1/duct-run", request, options) as Promise<models.DuctRunAnswer>;
  }

  /** Whole runs side by side. */
  ductRunCompare(request: models.DuctRunComparisonRequest, options: CalculationOptions = {}): Promise<models.DuctRunComparisonAnswer> {
    return this.ask("POST", "/v1/duct-run/compare", request, options) as Promise<models.DuctRunComparisonAnswer>;
  }

  /** Permitted uses of conduit. */
  permittedUse(request: models.PermittedUseRequest, options: CalculationOptions = {}): Promise<models.PermittedUseAnswer> {
    return this.ask("POST", "/v1/permitted-use", request, options) as Promise<models.PermittedUseAnswer>;
  }

  /** Conduit size. */
  conduitSize(request: models.ConduitSizeRequest, options: CalculationOptions = {}): Promise<models.ConduitSizeAnswer> {
    return this.ask("POST", "/v1/conduit-size", request, options) as Promise<models.ConduitSizeAnswer>;
  }

  /** Conduit fill. */
  fill(request: models.FillRequest, options: CalculationOptions = {}): Promise<models.FillAnswer> {
    return this.ask("POST", "/v1/fill", request, options) as Promise<models.FillAnswer>;
  }

  /** Conductor count. */
  conductorCount(request: models.ConductorCountRequest, options: CalculationOptions = {}): Promise<models.ConductorCountAnswer> {
    return this.ask("POST", "/v1/conductor-count", request, options) as Promise<models.ConductorCountAnswer>;
  }

  /** Minimum cover. */
  cover(request: models.CoverRequest, options: CalculationOptions = {}): Promise<models.CoverAnswer> {
    return this.ask("POST", "/v1/cover", request, options) as Promise<models.CoverAnswer>;
  }

  /** Trench volumes. */
  trench(request: models.TrenchRequest, options: CalculationOptions = {}): Promise<models.TrenchAnswer> {
    return this.ask("POST", "/v1/trench", request, options) as Promise<models.TrenchAnswer>;
  }

  /** Spacers of a duct bank. */
  spacers(request: models.SpacersRequest, options: CalculationOptions = {}): Promise<models.SpacersAnswer> {
    return this.ask("POST", "/v1/spacers", request, options) as Promise<models.SpacersAnswer>;
  }

  /** Concrete encasement. */
  encasement(request: models.EncasementRequest, options: CalculationOptions = {}): Promise<models.EncasementAnswer> {
    return this.ask("POST", "/v1/encasement", request, options) as Promise<models.EncasementAnswer>;
  }

  /** Flotation of ducts. */
  flotation(request: models.FlotationRequest, options: CalculationOptions = {}): Promise<models.FlotationAnswer> {
    return this.ask("POST", "/v1/flotation", request, options) as Promise<models.FlotationAnswer>;
  }

  /** Earth and traffic on ducts. */
  earthLoad(request: models.EarthLoadRequest, options: CalculationOptions = {}): Promise<models.EarthLoadAnswer> {
    return this.ask("POST", "/v1/earth-load", request, options) as Promise<models.EarthLoadAnswer>;
  }

  /** Lengths, joints and elbows. */
  joints(request: models.JointsRequest, options: CalculationOptions = {}): Promise<models.JointsAnswer> {
    return this.ask("POST", "/v1/joints", request, options) as Promise<models.JointsAnswer>;
  }

  /** Thermal expansion. */
  expansion(request: models.ExpansionRequest, options: CalculationOptions = {}): Promise<models.ExpansionAnswer> {
    return this.ask("POST", "/v1/expansion", request, options) as Promise<models.ExpansionAnswer>;
  }

  /** Supports above ground. */
  supports(request: models.SupportsRequest, options: CalculationOptions = {}): Promise<models.SupportsAnswer> {
    return this.ask("POST", "/v1/supports", request, options) as Promise<models.SupportsAnswer>;
  }

  /** Size of a pull box. */
  pullBox(request: models.PullBoxRequest, options: CalculationOptions = {}): Promise<models.PullBoxAnswer> {
    return this.ask("POST", "/v1/pull-box", request, options) as Promise<models.PullBoxAnswer>;
  }

  /** Pull points of a route. */
  pullPlan(request: models.PullPlanRequest, options: CalculationOptions = {}): Promise<models.PullPlanAnswer> {
    return this.ask("POST", "/v1/pull-plan", request, options) as Promise<models.PullPlanAnswer>;
  }

  /** Pulling tension. */
  pullTension(request: models.PullTensionRequest, options: CalculationOptions = {}): Promise<models.PullTensionAnswer> {
    return this.ask("POST", "/v1/pull-tension", request, options) as Promise<models.PullTensionAnswer>;
  }

  /** Ampacity of a duct bank. */
  ampacity(request: models.AmpacityRequest, options: CalculationOptions = {}): Promise<models.AmpacityAnswer> {
    return this.ask("POST", "/v1/ampacity", request, options) as Promise<models.AmpacityAnswer>;
  }

  /** Voltage drop of a circuit. */
  voltageDrop(request: models.VoltageDropRequest, options: CalculationOptions = {}): Promise<models.VoltageDropAnswer> {
    return this.ask("POST", "/v1/voltage-drop", request, options) as Promise<models.VoltageDropAnswer>;
  }

  /** Many calculations at once. */
  batch(request: models.BatchRequest, options: RemedyingOptions = {}): Promise<models.BatchAnswer> {
    return this.ask("POST", "/v1/batch", request, options) as Promise<models.BatchAnswer>;
  }

  /** Conduit and duct dimensions. */
  listConduits(options: ListConduitsOptions = {}): Promise<models.ConduitTable> {
    return this.ask("GET", "/v1/tables/conduits", undefined, options) as Promise<models.ConduitTable>;
  }

  /** Conductor dimensions. */
  listConductors(options: ListConductorsOptions = {}): Promise<models.ConductorTable> {
    return this.ask("GET", "/v1/tables/conductors", undefined, options) as Promise<models.ConductorTable>;
  }

  /** Expansion coefficients. */
  listMaterials(options: ListMaterialsOptions = {}): Promise<models.MaterialTable> {
    return this.ask("GET", "/v1/tables/materials", undefined, options) as Promise<models.MaterialTable>;
  }

  /** Friction coefficients. */
  listFriction(options: ListFrictionOptions = {}): Promise<models.FrictionTable> {
    return this.ask("GET", "/v1/tables/friction", undefined, options) as Promise<models.FrictionTable>;
  }

  /** Unit codes. */
  listUnits(options: ListUnitsOptions = {}): Promise<models.UnitTable> {
    return this.ask("GET", "/v1/tables/units", undefined, options) as Promise<models.UnitTable>;
  }

  /** Sources. */
  listSources(options: ListSourcesOptions = {}): Promise<models.SourceTable> {
    return this.ask("GET", "/v1/tables/sources", undefined, options) as Promise<models.SourceTable>;
  }

  /** The process answers. */
  checkAlive(options: Options = {}): Promise<models.Alive> {
    return this.ask("GET", "/livez", undefined, options) as Promise<models.Alive>;
  }

  /** The tables are loaded and requests are welcome. */
  checkReady(options: Options = {}): Promise<models.Ready> {
    return this.ask("GET", "/readyz", undefined, options) as Promise<models.Ready>;
  }
}
