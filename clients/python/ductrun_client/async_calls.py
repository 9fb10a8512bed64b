"""The calls of the contract, written by `make clients`: change the contract, not this file."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, overload

from . import models
from .giving import Given, Measured
from .operations import CALLS
from .requesting import Call


class AsyncCalls:
    """A method for every operation; what the members of a request mean stands at its model."""

    async def _ask(self, call: Call, body: tuple[Any, ...], given: dict[str, Any]) -> Any:
        raise NotImplementedError

    @overload
    async def permitted_use(
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
    async def permitted_use(
        self,
        *,
        type: models.ConduitType,
        uses: Sequence[models.ConduitUse],
        ambient_temperature: Measured[models.Temperature] | None = None,
        code_edition: models.CodeEdition | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PermittedUseAnswer: ...

    async def permitted_use(self, *body: Any, **given: Any) -> Any:
        """Permitted uses of conduit: give its members by name, or a whole request."""
        return await self._ask(CALLS["permitted_use"], body, given)

    @overload
    async def conduit_size(
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
    async def conduit_size(
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

    async def conduit_size(self, *body: Any, **given: Any) -> Any:
        """Conduit size: give its members by name, or a whole request."""
        return await self._ask(CALLS["conduit_size"], body, given)

    @overload
    async def fill(
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
    async def fill(
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

    async def fill(self, *body: Any, **given: Any) -> Any:
        """Conduit fill: give its members by name, or a whole request."""
        return await self._ask(CALLS["fill"], body, given)

    @overload
    async def conductor_count(
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
    async def conductor_count(
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

    async def conductor_count(self, *body: Any, **given: Any) -> Any:
        """Conductor count: give its members by name, or a whole request."""
        return await self._ask(CALLS["conductor_count"], body, given)

    @overload
    async def cover(
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
    async def cover(
        self,
        *,
        location: models.BurialLocation,
        voltage: models.VoltageClass,
        wiring_method: models.WiringMethod,
        code_edition: models.CodeEdition | None = None,
        concrete_above: Measured[models.Length] | None = None,
        cover: Measured[models.Length] | None = None,
        encased: bool | None = None,
        listed_for_direct_burial: bool | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.CoverAnswer: ...

    async def cover(self, *body: Any, **given: Any) -> Any:
        """Minimum cover: give its members by name, or a whole request."""
        return await self._ask(CALLS["cover"], body, given)

    @overload
    async def trench(
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
    async def trench(
        self,
        *,
        bank: Given[models.DuctBank],
        length: Measured[models.Length],
        bedding: Measured[models.Length] | None = None,
        bucket_widths: Sequence[Measured[models.Length]] | None = None,
        compacted_volume_factor: float | None = None,
        concrete_cover: Given[models.ConcreteCover] | None = None,
        cover: Measured[models.Length] | None = None,
        haul_capacity: Measured[models.Volume] | None = None,
        least_width: Measured[models.Length] | None = None,
        loose_volume_factor: float | None = None,
        nearest_utility: Measured[models.Length] | None = None,
        pavement: Given[models.Pavement] | None = None,
        pour_shape: models.PourShape | None = None,
        practice: models.TrenchPractice | None = None,
        select_fill: Measured[models.Length] | None = None,
        side_slope: float | None = None,
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

    async def trench(self, *body: Any, **given: Any) -> Any:
        """Trench volumes: give its members by name, or a whole request."""
        return await self._ask(CALLS["trench"], body, given)

    @overload
    async def spacers(
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
    async def spacers(
        self,
        *,
        length: Measured[models.Length],
        tiers: Sequence[int],
        duct_count_per_spacer: int | None = None,
        end_offset: Measured[models.Length] | None = None,
        interval: Given[models.SpacerInterval] | None = None,
        piece_system: models.PieceSystem | None = None,
        shared_end_count: int | None = None,
        stick_length: Measured[models.Length] | None = None,
        top_closure: models.TopClosure | None = None,
        waste_percent: float | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.SpacersAnswer: ...

    async def spacers(self, *body: Any, **given: Any) -> Any:
        """Spacers of a duct bank: give its members by name, or a whole request."""
        return await self._ask(CALLS["spacers"], body, given)

    @overload
    async def encasement(
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
    async def encasement(
        self,
        *,
        bank: Given[models.DuctBank],
        length: Measured[models.Length],
        bag_mass: Measured[models.Mass] | None = None,
        cement_content: Measured[models.Density] | None = None,
        concrete_cover: Given[models.ConcreteCover] | None = None,
        concrete_density: Measured[models.Density] | None = None,
        maximum_aggregate_size: Measured[models.Length] | None = None,
        order_increment: Measured[models.Volume] | None = None,
        pigment_percent: float | None = None,
        pour_shape: models.PourShape | None = None,
        reinforcing: Given[models.Reinforcing] | None = None,
        side_slope: float | None = None,
        trench_width: Measured[models.Length] | None = None,
        truck_capacity: Measured[models.Volume] | None = None,
        waste_percent: float | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.EncasementAnswer: ...

    async def encasement(self, *body: Any, **given: Any) -> Any:
        """Concrete encasement: give its members by name, or a whole request."""
        return await self._ask(CALLS["encasement"], body, given)

    @overload
    async def flotation(
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
    async def flotation(
        self,
        *,
        bank: Given[models.DuctBank],
        cable_mass_per_length: Measured[models.MassPerLength] | None = None,
        contents: models.DuctContents | None = None,
        duct_density: Measured[models.Density] | None = None,
        duct_mass_per_length: Measured[models.MassPerLength] | None = None,
        fluid_density: Measured[models.Density] | None = None,
        length: Measured[models.Length] | None = None,
        lift_height: Measured[models.Length] | None = None,
        medium: models.FlotationMedium | None = None,
        safety_factor: float | None = None,
        station_spacing: Measured[models.Length] | None = None,
        tie_down_capacity: Measured[models.Force] | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.FlotationAnswer: ...

    async def flotation(self, *body: Any, **given: Any) -> Any:
        """Flotation of ducts: give its members by name, or a whole request."""
        return await self._ask(CALLS["flotation"], body, given)

    @overload
    async def joints(
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
    async def joints(
        self,
        *,
        conduit: Given[models.ListedConduit],
        duct_count: int,
        length: Measured[models.Length],
        bell_loss: Measured[models.Length] | None = None,
        cord_tail: Measured[models.Length] | None = None,
        elbows: Sequence[Given[models.DuctElbow]] | None = None,
        end: models.RunEnd | None = None,
        ends: models.DuctEnds | None = None,
        joints_per_quart: int | None = None,
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

    async def joints(self, *body: Any, **given: Any) -> Any:
        """Lengths, joints and elbows: give its members by name, or a whole request."""
        return await self._ask(CALLS["joints"], body, given)

    @overload
    async def expansion(
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
    async def expansion(
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

    async def expansion(self, *body: Any, **given: Any) -> Any:
        """Thermal expansion: give its members by name, or a whole request."""
        return await self._ask(CALLS["expansion"], body, given)

    @overload
    async def supports(
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
    async def supports(
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

    async def supports(self, *body: Any, **given: Any) -> Any:
        """Supports above ground: give its members by name, or a whole request."""
        return await self._ask(CALLS["supports"], body, given)

    @overload
    async def pull_plan(
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
    async def pull_plan(
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

    async def pull_plan(self, *body: Any, **given: Any) -> Any:
        """Pull points of a route: give its members by name, or a whole request."""
        return await self._ask(CALLS["pull_plan"], body, given)

    @overload
    async def pull_tension(
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
    async def pull_tension(
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
        cable_order: Given[models.CableOrder] | None = None,
        code_edition: models.CodeEdition | None = None,
        conductor_counting: models.ConductorCounting | None = None,
        device_limit: Measured[models.Force] | None = None,
        feed_length: Measured[models.Length] | None = None,
        find_largest: bool | None = None,
        friction_coefficient: float | None = None,
        friction_range: Given[models.FrictionRange] | None = None,
        grip_limit: Measured[models.Force] | None = None,
        incoming_tension: Measured[models.Force] | None = None,
        profile_spacing: Measured[models.Length] | None = None,
        weight_correction_factor: float | None = None,
        weight_correction_in: models.WeightCorrectionUse | None = None,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.PullTensionAnswer: ...

    async def pull_tension(self, *body: Any, **given: Any) -> Any:
        """Pulling tension: give its members by name, or a whole request."""
        return await self._ask(CALLS["pull_tension"], body, given)

    @overload
    async def batch(
        self,
        body: Given[models.BatchRequest],
        /,
        *,
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.BatchAnswer: ...

    @overload
    async def batch(
        self,
        *,
        items: Sequence[Given[models.BatchItem]],
        units: models.UnitSystem | None = None,
        working: bool | None = None,
        assumptions: models.AssumptionPolicy | None = None,
        request: models.RequestBack | None = None,
    ) -> models.BatchAnswer: ...

    async def batch(self, *body: Any, **given: Any) -> Any:
        """Many calculations at once: give its members by name, or a whole request."""
        return await self._ask(CALLS["batch"], body, given)

    async def list_conduits(
        self,
        *,
        type: models.ConduitType | None = None,
        trade_size: models.TradeSize | None = None,
        units: models.UnitSystem | None = None,
    ) -> models.ConduitTable:
        """Conduit and duct dimensions."""
        found: models.ConduitTable = await self._ask(
            CALLS["list_conduits"], (), {"type": type, "trade_size": trade_size, "units": units}
        )
        return found

    async def list_conductors(
        self,
        *,
        table: str | None = None,
        insulation: models.ConductorMarking | None = None,
        size: models.ConductorSize | None = None,
        stranding: str | None = None,
        units: models.UnitSystem | None = None,
    ) -> models.ConductorTable:
        """Conductor dimensions."""
        found: models.ConductorTable = await self._ask(
            CALLS["list_conductors"],
            (),
            {"table": table, "insulation": insulation, "size": size, "stranding": stranding, "units": units},
        )
        return found

    async def list_materials(
        self, *, material: models.ConduitMaterial | None = None, units: models.UnitSystem | None = None
    ) -> models.MaterialTable:
        """Expansion coefficients."""
        found: models.MaterialTable = await self._ask(
            CALLS["list_materials"], (), {"material": material, "units": units}
        )
        return found

    async def list_friction(
        self, *, jacket: str | None = None, conduit: str | None = None, lubrication: str | None = None
    ) -> models.FrictionTable:
        """Friction coefficients."""
        found: models.FrictionTable = await self._ask(
            CALLS["list_friction"], (), {"jacket": jacket, "conduit": conduit, "lubrication": lubrication}
        )
        return found

    async def list_units(self, *, dimension: str | None = None, unit: str | None = None) -> models.UnitTable:
        """Unit codes."""
        found: models.UnitTable = await self._ask(CALLS["list_units"], (), {"dimension": dimension, "unit": unit})
        return found

    async def list_sources(self, *, source_id: str | None = None) -> models.SourceTable:
        """Sources."""
        found: models.SourceTable = await self._ask(CALLS["list_sources"], (), {"source_id": source_id})
        return found

    async def check_alive(self) -> models.Alive:
        """The process answers."""
        found: models.Alive = await self._ask(CALLS["check_alive"], (), {})
        return found

    async def check_ready(self) -> models.Ready:
        """The tables are loaded and requests are welcome."""
        found: models.Ready = await self._ask(CALLS["check_ready"], (), {})
        return found
