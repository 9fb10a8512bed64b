"""The calls of the contract, written by `make clients`: change the contract, not this file."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Literal, overload

from . import models
from .giving import Given, Measured
from .operations import CALLS
from .requesting import Call


class Calls:
    """A method for every operation; what the members of a request mean stands at its model."""

    def _ask(self, call: Call, body: tuple[Any, ...], given: dict[str, Any]) -> Any:
        raise NotImplementedError

    def _write(self, call: Call, media_type: str, body: object, given: dict[str, Any]) -> bytes:
        raise NotImplementedError

    @overload
    def duct_run(
        self,
        body: Given[models.DuctRunRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
        remedies: bool | None = None,
    ) -> models.DuctRunAnswer: ...

    @overload
    def duct_run(
        self,
        *,
        end: Given[models.RunPlace],
        start: Given[models.RunPlace],
        stretches: Sequence[Given[models.Stretch]],
        bank: Given[models.DuctBank] | None = None,
        circuits: Sequence[Given[models.Circuit]] | None = None,
        code_edition: models.CodeEdition | None = None,
        concrete: Given[models.Encasing] | None = None,
        digging: Given[models.Digging] | None = None,
        earth_load: Given[models.EarthLoading] | None = None,
        flotation: Given[models.Floating] | None = None,
        joining: Given[models.RunJoining] | None = None,
        movement: Given[models.RunMoving] | None = None,
        name: str | None = None,
        note: str | None = None,
        ordering: Given[models.CableOrder] | None = None,
        profile: Given[models.Profile] | None = None,
        pulling: Given[models.PullPractice] | None = None,
        rates: Sequence[Given[models.Rate]] | None = None,
        rating: Given[models.RatingPractice] | None = None,
        site: Given[models.Site] | None = None,
        spacing: Given[models.Spacing] | None = None,
        straight_lengths: models.StraightLengths | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
        remedies: bool | None = None,
    ) -> models.DuctRunAnswer: ...

    def duct_run(self, *body: Any, **given: Any) -> Any:
        """A whole run: give its members by name, or a whole request."""
        return self._ask(CALLS["duct_run"], body, given)

    @overload
    def duct_run_compare(
        self,
        body: Given[models.DuctRunComparisonRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.DuctRunComparisonAnswer: ...

    @overload
    def duct_run_compare(
        self,
        *,
        runs: Sequence[Given[models.NamedRun]],
        rank_by: models.RankMeasure | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.DuctRunComparisonAnswer: ...

    def duct_run_compare(self, *body: Any, **given: Any) -> Any:
        """Whole runs side by side: give its members by name, or a whole request."""
        return self._ask(CALLS["duct_run_compare"], body, given)

    @overload
    def permitted_use(
        self,
        body: Given[models.PermittedUseRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PermittedUseAnswer: ...

    @overload
    def permitted_use(
        self,
        *,
        conduit_type: models.ConduitType,
        uses: Sequence[models.ConduitUse],
        ambient_temperature: Measured[models.Temperature] | None = None,
        code_edition: models.CodeEdition | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PermittedUseAnswer: ...

    def permitted_use(self, *body: Any, **given: Any) -> Any:
        """Permitted uses of conduit: give its members by name, or a whole request."""
        return self._ask(CALLS["permitted_use"], body, given)

    @overload
    def conduit_size(
        self,
        body: Given[models.ConduitSizeRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.ConduitSizeAnswer: ...

    @overload
    def conduit_size(
        self,
        *,
        cables: Sequence[Given[models.CableLine]],
        type: models.ConduitType,
        code_edition: models.CodeEdition | None = None,
        nipple_length: Measured[models.Length] | None = None,
        single_cable_rounding: bool | None = None,
        spare_percent: float | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.ConduitSizeAnswer: ...

    def conduit_size(self, *body: Any, **given: Any) -> Any:
        """Conduit size: give its members by name, or a whole request."""
        return self._ask(CALLS["conduit_size"], body, given)

    @overload
    def fill(
        self,
        body: Given[models.FillRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.FillAnswer: ...

    @overload
    def fill(
        self,
        *,
        cables: Sequence[Given[models.CableLine]],
        conduit: Given[models.Conduit],
        code_edition: models.CodeEdition | None = None,
        nipple_length: Measured[models.Length] | None = None,
        single_cable_rounding: bool | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.FillAnswer: ...

    def fill(self, *body: Any, **given: Any) -> Any:
        """Conduit fill: give its members by name, or a whole request."""
        return self._ask(CALLS["fill"], body, given)

    @overload
    def conductor_count(
        self,
        body: Given[models.ConductorCountRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.ConductorCountAnswer: ...

    @overload
    def conductor_count(
        self,
        *,
        cable: Given[models.Cable],
        conduit: Given[models.Conduit],
        code_edition: models.CodeEdition | None = None,
        nipple_length: Measured[models.Length] | None = None,
        single_cable_rounding: bool | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.ConductorCountAnswer: ...

    def conductor_count(self, *body: Any, **given: Any) -> Any:
        """Conductor count: give its members by name, or a whole request."""
        return self._ask(CALLS["conductor_count"], body, given)

    @overload
    def cover(
        self,
        body: Given[models.CoverRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.CoverAnswer: ...

    @overload
    def cover(
        self,
        *,
        location: models.BurialLocation,
        voltage_class: models.VoltageClass,
        wiring_method: models.WiringMethod,
        code_edition: models.CodeEdition | None = None,
        concrete_above: Measured[models.Length] | None = None,
        concrete_around: Measured[models.Length] | None = None,
        cover: Measured[models.Length] | None = None,
        encased: bool | None = None,
        listed_for_direct_burial: bool | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.CoverAnswer: ...

    def cover(self, *body: Any, **given: Any) -> Any:
        """Minimum cover: give its members by name, or a whole request."""
        return self._ask(CALLS["cover"], body, given)

    @overload
    def trench(
        self,
        body: Given[models.TrenchRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.TrenchAnswer: ...

    @overload
    def trench(
        self,
        *,
        bank: Given[models.DuctBank],
        length: Measured[models.Length],
        bedding: Measured[models.Length] | None = None,
        bucket_widths: Sequence[Measured[models.Length]] | None = None,
        compacted_volume_factor: float | None = None,
        concrete_cover: Given[models.ConcreteCover] | None = None,
        cover: Measured[models.Length] | None = None,
        fall: Given[models.Fall] | None = None,
        haul_capacity: Measured[models.Volume] | None = None,
        least_width: Measured[models.Length] | None = None,
        loose_volume_factor: float | None = None,
        nearest_utility: Measured[models.Length] | None = None,
        pavement: Given[models.Pavement] | None = None,
        pour_shape: models.PourShape | None = None,
        practice: models.TrenchPractice | None = None,
        select_fill: Measured[models.Length] | None = None,
        side_slope_ratio: float | None = None,
        soil: models.SoilKind | None = None,
        soil_type: models.ExcavationSoilType | None = None,
        stations: Sequence[Given[models.Station]] | None = None,
        tape_overlap_percent: float | None = None,
        warning_tape_depth: Measured[models.Length] | None = None,
        width: Measured[models.Length] | None = None,
        working_space: Measured[models.Length] | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.TrenchAnswer: ...

    def trench(self, *body: Any, **given: Any) -> Any:
        """Trench volumes: give its members by name, or a whole request."""
        return self._ask(CALLS["trench"], body, given)

    @overload
    def spacers(
        self,
        body: Given[models.SpacersRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.SpacersAnswer: ...

    @overload
    def spacers(
        self,
        *,
        length: Measured[models.Length],
        bank: Given[models.DuctBank] | None = None,
        duct_count_per_spacer: int | None = None,
        end_offset: Measured[models.Length] | None = None,
        interval: Given[models.SpacerInterval] | None = None,
        piece_system: models.PieceSystem | None = None,
        shared_end_count: int | None = None,
        stick_length: Measured[models.Length] | None = None,
        tiers: Sequence[int] | None = None,
        top_closure: models.TopClosure | None = None,
        waste_percent: float | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.SpacersAnswer: ...

    def spacers(self, *body: Any, **given: Any) -> Any:
        """Spacers of a duct bank: give its members by name, or a whole request."""
        return self._ask(CALLS["spacers"], body, given)

    @overload
    def encasement(
        self,
        body: Given[models.EncasementRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.EncasementAnswer: ...

    @overload
    def encasement(
        self,
        *,
        bank: Given[models.DuctBank],
        length: Measured[models.Length],
        bag_mass: Measured[models.Mass] | None = None,
        bank_ground: Given[models.BankGround] | None = None,
        cement_content: Measured[models.Density] | None = None,
        concrete_cover: Given[models.ConcreteCover] | None = None,
        concrete_density: Measured[models.Density] | None = None,
        maximum_aggregate_size: Measured[models.Length] | None = None,
        order_increment: Measured[models.Volume] | None = None,
        pigment_percent: float | None = None,
        pour_shape: models.PourShape | None = None,
        reinforcing: Given[models.Reinforcing] | None = None,
        side_slope_ratio: float | None = None,
        trench_width: Measured[models.Length] | None = None,
        truck_capacity: Measured[models.Volume] | None = None,
        waste_percent: float | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.EncasementAnswer: ...

    def encasement(self, *body: Any, **given: Any) -> Any:
        """Concrete encasement: give its members by name, or a whole request."""
        return self._ask(CALLS["encasement"], body, given)

    @overload
    def flotation(
        self,
        body: Given[models.FlotationRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.FlotationAnswer: ...

    @overload
    def flotation(
        self,
        *,
        bank: Given[models.DuctBank],
        cable_mass_per_length: Measured[models.MassPerLength] | None = None,
        concrete_cover: Given[models.ConcreteCover] | None = None,
        concrete_density: Measured[models.Density] | None = None,
        contents: models.DuctContents | None = None,
        cover: Measured[models.Length] | None = None,
        duct_density: Measured[models.Density] | None = None,
        duct_mass_per_length: Measured[models.MassPerLength] | None = None,
        duct_material: models.DuctMaterial | None = None,
        fluid_density: Measured[models.Density] | None = None,
        length: Measured[models.Length] | None = None,
        lift_height: Measured[models.Length] | None = None,
        medium: models.FlotationMedium | None = None,
        pour_shape: models.PourShape | None = None,
        safety_factor: float | None = None,
        saturated_soil_density: Measured[models.Density] | None = None,
        station_spacing: Measured[models.Length] | None = None,
        tie_down_capacity: Measured[models.Force] | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.FlotationAnswer: ...

    def flotation(self, *body: Any, **given: Any) -> Any:
        """Flotation of ducts: give its members by name, or a whole request."""
        return self._ask(CALLS["flotation"], body, given)

    @overload
    def earth_load(
        self,
        body: Given[models.EarthLoadRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.EarthLoadAnswer: ...

    @overload
    def earth_load(
        self,
        *,
        cover: Measured[models.Length],
        traffic: models.Traffic,
        allowable_wall_stress: Measured[models.Pressure] | None = None,
        arching_soil: models.ArchingSoil | None = None,
        bank: Given[models.DuctBank] | None = None,
        bedding_angle: Measured[models.Angle] | None = None,
        bedding_constant_ratio: float | None = None,
        code_edition: models.CodeEdition | None = None,
        compaction: models.Compaction | None = None,
        concrete_cover: Given[models.ConcreteCover] | None = None,
        concrete_density: Measured[models.Density] | None = None,
        conduit: Given[models.Conduit] | None = None,
        deflection_limit_percent: float | None = None,
        duct_density: Measured[models.Density] | None = None,
        duct_mass_per_length: Measured[models.MassPerLength] | None = None,
        duct_material: models.PlasticMaterial | None = None,
        earth_load_method: models.EarthLoadMethod | None = None,
        embedment: models.Embedment | None = None,
        encased: bool | None = None,
        flotation_safety_factor: float | None = None,
        groundwater_depth: Measured[models.Length] | None = None,
        lag_factor: float | None = None,
        lift_height: Measured[models.Length] | None = None,
        live_load_method: models.LiveLoadMethod | None = None,
        load_spread_ratio: float | None = None,
        long_term_modulus: Measured[models.Pressure] | None = None,
        modulus: Measured[models.Pressure] | None = None,
        pipe_stiffness: Measured[models.Pressure] | None = None,
        saturated_soil_density: Measured[models.Density] | None = None,
        soil_density: Measured[models.Density] | None = None,
        soil_modulus: Measured[models.Pressure] | None = None,
        trench_width: Measured[models.Length] | None = None,
        wheel_load: Measured[models.Force] | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.EarthLoadAnswer: ...

    def earth_load(self, *body: Any, **given: Any) -> Any:
        """Earth and traffic on ducts: give its members by name, or a whole request."""
        return self._ask(CALLS["earth_load"], body, given)

    @overload
    def joints(
        self,
        body: Given[models.JointsRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.JointsAnswer: ...

    @overload
    def joints(
        self,
        *,
        conduit: Given[models.ListedConduit],
        duct_count: int,
        length: Measured[models.Length],
        bell_loss: Measured[models.Length] | None = None,
        cement_per_joint: Measured[models.Volume] | None = None,
        cord_tail: Measured[models.Length] | None = None,
        elbows: Sequence[Given[models.DuctElbow]] | None = None,
        end: models.RunEnd | None = None,
        ends: models.DuctEnds | None = None,
        mandrel_clearance: Measured[models.Length] | None = None,
        offcuts_shared: bool | None = None,
        spare_duct_count: int | None = None,
        start: models.RunEnd | None = None,
        stick_length: Measured[models.Length] | None = None,
        temperature: Measured[models.Temperature] | None = None,
        waste_percent: float | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.JointsAnswer: ...

    def joints(self, *body: Any, **given: Any) -> Any:
        """Lengths, joints and elbows: give its members by name, or a whole request."""
        return self._ask(CALLS["joints"], body, given)

    @overload
    def expansion(
        self,
        body: Given[models.ExpansionRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.ExpansionAnswer: ...

    @overload
    def expansion(
        self,
        *,
        temperatures: Given[models.Temperatures],
        code_edition: models.CodeEdition | None = None,
        coefficient: Measured[models.ExpansionCoefficient] | None = None,
        crosses_structural_joint: bool | None = None,
        emerges_from_grade: bool | None = None,
        fitting_travel: Measured[models.Length] | None = None,
        length: Measured[models.Length] | None = None,
        material: models.ConduitMaterial | None = None,
        opening_temperatures: Sequence[Measured[models.Temperature]] | None = None,
        piston_convention: models.PistonConvention | None = None,
        piston_engagement: Measured[models.Length] | None = None,
        service_temperature: Measured[models.Temperature] | None = None,
        setting: models.RunSetting | None = None,
        straight_runs: Sequence[Measured[models.Length]] | None = None,
        usable_travel_percent: float | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.ExpansionAnswer: ...

    def expansion(self, *body: Any, **given: Any) -> Any:
        """Thermal expansion: give its members by name, or a whole request."""
        return self._ask(CALLS["expansion"], body, given)

    @overload
    def supports(
        self,
        body: Given[models.SupportsRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.SupportsAnswer: ...

    @overload
    def supports(
        self,
        *,
        conduit: Given[models.SupportedConduit],
        length: Measured[models.Length],
        code_edition: models.CodeEdition | None = None,
        end_distance: Measured[models.Length] | None = None,
        fittings: Given[models.Fittings] | None = None,
        termination_count: int | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.SupportsAnswer: ...

    def supports(self, *body: Any, **given: Any) -> Any:
        """Supports above ground: give its members by name, or a whole request."""
        return self._ask(CALLS["supports"], body, given)

    @overload
    def pull_box(
        self,
        body: Given[models.PullBoxRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PullBoxAnswer: ...

    @overload
    def pull_box(
        self,
        *,
        circuits: Sequence[Given[models.BoxCircuit]],
        entries: Sequence[Given[models.BoxEntry]],
        voltage: Measured[models.Voltage],
        box: Given[models.BoxSize] | None = None,
        box_sizes: Sequence[Given[models.BoxSize]] | None = None,
        code_edition: models.CodeEdition | None = None,
        racking: Given[models.Racking] | None = None,
        removable_cover: models.BoxWall | None = None,
        structure: models.Structure | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PullBoxAnswer: ...

    def pull_box(self, *body: Any, **given: Any) -> Any:
        """Size of a pull box: give its members by name, or a whole request."""
        return self._ask(CALLS["pull_box"], body, given)

    @overload
    def pull_plan(
        self,
        body: Given[models.PullPlanRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PullPlanAnswer: ...

    @overload
    def pull_plan(
        self,
        *,
        cables: Sequence[Given[models.CableLine]],
        conduit: Given[models.Conduit],
        sections: Sequence[Given[models.RouteSection]],
        allowable_sidewall_pressure: Measured[models.ForcePerLength] | None = None,
        allowable_tension: Measured[models.Force] | None = None,
        arrangement: models.CableArrangement | None = None,
        attachment: models.Attachment | None = None,
        box_positions: Given[models.BoxPositions] | None = None,
        brake_limit: Measured[models.Force] | None = None,
        braking_friction_coefficient: float | None = None,
        code_edition: models.CodeEdition | None = None,
        conductor_counting: models.ConductorCounting | None = None,
        device_limit: Measured[models.Force] | None = None,
        feed_length: Measured[models.Length] | None = None,
        friction_coefficient: float | None = None,
        grip_limit: Measured[models.Force] | None = None,
        incoming_tension: Measured[models.Force] | None = None,
        weight_correction_factor: float | None = None,
        weight_correction_in: models.WeightCorrectionUse | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PullPlanAnswer: ...

    def pull_plan(self, *body: Any, **given: Any) -> Any:
        """Pull points of a route: give its members by name, or a whole request."""
        return self._ask(CALLS["pull_plan"], body, given)

    @overload
    def pull_tension(
        self,
        body: Given[models.PullTensionRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PullTensionAnswer: ...

    @overload
    def pull_tension(
        self,
        *,
        cables: Sequence[Given[models.CableLine]],
        conduit: Given[models.Conduit],
        sections: Sequence[Given[models.RouteSection]],
        allowable_sidewall_pressure: Measured[models.ForcePerLength] | None = None,
        allowable_tension: Measured[models.Force] | None = None,
        arrangement: models.CableArrangement | None = None,
        attachment: models.Attachment | None = None,
        brake_limit: Measured[models.Force] | None = None,
        braking_friction_coefficient: float | None = None,
        code_edition: models.CodeEdition | None = None,
        conductor_counting: models.ConductorCounting | None = None,
        device_limit: Measured[models.Force] | None = None,
        feed_length: Measured[models.Length] | None = None,
        find_largest: bool | None = None,
        friction_coefficient: float | None = None,
        friction_range: Given[models.FrictionRange] | None = None,
        grip_limit: Measured[models.Force] | None = None,
        incoming_tension: Measured[models.Force] | None = None,
        ordering: Given[models.CableOrder] | None = None,
        profile_spacing: Measured[models.Length] | None = None,
        weight_correction_factor: float | None = None,
        weight_correction_in: models.WeightCorrectionUse | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PullTensionAnswer: ...

    def pull_tension(self, *body: Any, **given: Any) -> Any:
        """Pulling tension: give its members by name, or a whole request."""
        return self._ask(CALLS["pull_tension"], body, given)

    @overload
    def ampacity(
        self,
        body: Given[models.AmpacityRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.AmpacityAnswer: ...

    @overload
    def ampacity(
        self,
        *,
        bank: Given[models.DuctBank],
        circuits: Sequence[Given[models.LoadedCircuit]],
        setting: models.BankSetting,
        code_edition: models.CodeEdition | None = None,
        concrete_cover: Given[models.ConcreteCover] | None = None,
        concrete_thermal_resistivity: Measured[models.ThermalResistivity] | None = None,
        cover: Measured[models.Length] | None = None,
        depth: Measured[models.Length] | None = None,
        duct_air_temperature: Measured[models.Temperature] | None = None,
        duct_material: models.WallMaterial | None = None,
        duct_thermal_resistivity: Measured[models.ThermalResistivity] | None = None,
        earth_temperature: Measured[models.Temperature] | None = None,
        earth_thermal_resistivity: Measured[models.ThermalResistivity] | None = None,
        frequency: Measured[models.Frequency] | None = None,
        method: models.AmpacityMethod | None = None,
        studies: Sequence[models.AmpacityStudy] | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.AmpacityAnswer: ...

    def ampacity(self, *body: Any, **given: Any) -> Any:
        """Ampacity of a duct bank: give its members by name, or a whole request."""
        return self._ask(CALLS["ampacity"], body, given)

    @overload
    def voltage_drop(
        self,
        body: Given[models.VoltageDropRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.VoltageDropAnswer: ...

    @overload
    def voltage_drop(
        self,
        *,
        cable: Given[models.Cable],
        length: Measured[models.Length],
        voltage: Measured[models.Voltage],
        apparent_power: Measured[models.ApparentPower] | None = None,
        code_edition: models.CodeEdition | None = None,
        conductor_temperature: Measured[models.Temperature] | None = None,
        conduit_material: models.CircuitConduit | None = None,
        current: Measured[models.Current] | None = None,
        duration_per_year: Measured[models.Duration] | None = None,
        frequency: Measured[models.Frequency] | None = None,
        limit_percent: float | None = None,
        parallel_count: int | None = None,
        power: Measured[models.Power] | None = None,
        power_factor: float | None = None,
        reactance: Measured[models.ResistancePerLength] | None = None,
        resistance: Measured[models.ResistancePerLength] | None = None,
        system: models.CircuitSystem | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.VoltageDropAnswer: ...

    def voltage_drop(self, *body: Any, **given: Any) -> Any:
        """Voltage drop of a circuit: give its members by name, or a whole request."""
        return self._ask(CALLS["voltage_drop"], body, given)

    @overload
    def batch(
        self,
        body: Given[models.BatchRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
        remedies: bool | None = None,
    ) -> models.BatchAnswer: ...

    @overload
    def batch(
        self,
        *,
        items: Sequence[Given[models.BatchItem]],
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
        remedies: bool | None = None,
    ) -> models.BatchAnswer: ...

    def batch(self, *body: Any, **given: Any) -> Any:
        """Many calculations at once: give its members by name, or a whole request."""
        return self._ask(CALLS["batch"], body, given)

    def list_conduits(
        self,
        *,
        type: models.ConduitType | None = None,
        trade_size: models.TradeSize | None = None,
        units: models.UnitSystem | None = None,
    ) -> models.ConduitTable:
        """Conduit and duct dimensions."""
        found: models.ConduitTable = self._ask(
            CALLS["list_conduits"], (), {"type": type, "trade_size": trade_size, "units": units}
        )
        return found

    def list_conductors(
        self,
        *,
        table: str | None = None,
        insulation: models.ConductorMarking | None = None,
        size: models.ConductorSize | None = None,
        stranding: str | None = None,
        units: models.UnitSystem | None = None,
    ) -> models.ConductorTable:
        """Conductor dimensions."""
        found: models.ConductorTable = self._ask(
            CALLS["list_conductors"],
            (),
            {"table": table, "insulation": insulation, "size": size, "stranding": stranding, "units": units},
        )
        return found

    def list_materials(
        self, *, material: models.ConduitMaterial | None = None, units: models.UnitSystem | None = None
    ) -> models.MaterialTable:
        """Expansion coefficients."""
        found: models.MaterialTable = self._ask(CALLS["list_materials"], (), {"material": material, "units": units})
        return found

    def list_friction(
        self, *, jacket: str | None = None, conduit: str | None = None, lubrication: str | None = None
    ) -> models.FrictionTable:
        """Friction coefficients."""
        found: models.FrictionTable = self._ask(
            CALLS["list_friction"], (), {"jacket": jacket, "conduit": conduit, "lubrication": lubrication}
        )
        return found

    def list_units(self, *, dimension: str | None = None, unit: str | None = None) -> models.UnitTable:
        """Unit codes."""
        found: models.UnitTable = self._ask(CALLS["list_units"], (), {"dimension": dimension, "unit": unit})
        return found

    def list_sources(self, *, source_id: str | None = None) -> models.SourceTable:
        """Sources."""
        found: models.SourceTable = self._ask(CALLS["list_sources"], (), {"source_id": source_id})
        return found

    def check_alive(self) -> models.Alive:
        """The process answers."""
        found: models.Alive = self._ask(CALLS["check_alive"], (), {})
        return found

    def check_ready(self) -> models.Ready:
        """The tables are loaded and requests are welcome."""
        found: models.Ready = self._ask(CALLS["check_ready"], (), {})
        return found

    @overload
    def document(
        self,
        operation: Literal["duct_run"],
        media_type: Literal[
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            "image/svg+xml",
            "text/csv",
            "text/html",
        ],
        request: Given[models.DuctRunRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        page: models.Page | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["duct_run_compare"],
        media_type: Literal["text/html"],
        request: Given[models.DuctRunComparisonRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["permitted_use"],
        media_type: Literal["text/html"],
        request: Given[models.PermittedUseRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["conduit_size"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.ConduitSizeRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["fill"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.FillRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["conductor_count"],
        media_type: Literal["text/html"],
        request: Given[models.ConductorCountRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["cover"],
        media_type: Literal["text/html"],
        request: Given[models.CoverRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["trench"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.TrenchRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["spacers"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.SpacersRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["encasement"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.EncasementRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["flotation"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.FlotationRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["earth_load"],
        media_type: Literal["text/html"],
        request: Given[models.EarthLoadRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["joints"],
        media_type: Literal["text/html"],
        request: Given[models.JointsRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["expansion"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.ExpansionRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["supports"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.SupportsRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["pull_box"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.PullBoxRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["pull_plan"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.PullPlanRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["pull_tension"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.PullTensionRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["ampacity"],
        media_type: Literal["image/svg+xml", "text/html"],
        request: Given[models.AmpacityRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    @overload
    def document(
        self,
        operation: Literal["voltage_drop"],
        media_type: Literal["text/html"],
        request: Given[models.VoltageDropRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
    ) -> bytes: ...

    def document(self, operation: str, media_type: str, request: object, /, **asked: Any) -> bytes:
        """Give an answer in another form that the contract has for it: a drawing, a sheet, a
        takeoff."""
        return self._write(CALLS[operation], media_type, request, asked)
