from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any, TypeVar

from attrs import define as _attrs_define
from attrs import field as _attrs_field

from ..models.verdict import Verdict
from ..types import UNSET, Unset

if TYPE_CHECKING:
    from ..models.assumption import Assumption
    from ..models.basis import Basis
    from ..models.caution import Caution
    from ..models.finding import Finding
    from ..models.step import Step
    from ..models.voltage_drop_request import VoltageDropRequest
    from ..models.voltage_drop_result import VoltageDropResult


T = TypeVar("T", bound="VoltageDropAnswer")


@_attrs_define
class VoltageDropAnswer:
    """The answer of voltage-drop with everything that defends it.

    Attributes:
        assumptions (list[Assumption]):
        basis (Basis): What the answer rests on.
        cautions (list[Caution]):
        findings (list[Finding]):
        notice (str):
        result (VoltageDropResult): What is lost, and what keeps within the limit.
        request (VoltageDropRequest | Unset): A circuit and its length.
        verdict (Verdict | Unset): What an answer, or a part of it, says of the limits: kept, broken, or not judged for
            want of something.
        working (list[Step] | Unset):
    """

    assumptions: list[Assumption]
    basis: Basis
    cautions: list[Caution]
    findings: list[Finding]
    notice: str
    result: VoltageDropResult
    request: VoltageDropRequest | Unset = UNSET
    verdict: Verdict | Unset = UNSET
    working: list[Step] | Unset = UNSET
    additional_properties: dict[str, Any] = _attrs_field(init=False, factory=dict)

    def to_dict(self) -> dict[str, Any]:
        assumptions = []
        for assumptions_item_data in self.assumptions:
            assumptions_item = assumptions_item_data.to_dict()
            assumptions.append(assumptions_item)

        basis = self.basis.to_dict()

        cautions = []
        for cautions_item_data in self.cautions:
            cautions_item = cautions_item_data.to_dict()
            cautions.append(cautions_item)

        findings = []
        for findings_item_data in self.findings:
            findings_item = findings_item_data.to_dict()
            findings.append(findings_item)

        notice = self.notice

        result = self.result.to_dict()

        request: dict[str, Any] | Unset = UNSET
        if not isinstance(self.request, Unset):
            request = self.request.to_dict()

        verdict: str | Unset = UNSET
        if not isinstance(self.verdict, Unset):
            verdict = self.verdict.value

        working: list[dict[str, Any]] | Unset = UNSET
        if not isinstance(self.working, Unset):
            working = []
            for working_item_data in self.working:
                working_item = working_item_data.to_dict()
                working.append(working_item)

        field_dict: dict[str, Any] = {}
        field_dict.update(self.additional_properties)
        field_dict.update(
            {
                "assumptions": assumptions,
                "basis": basis,
                "cautions": cautions,
                "findings": findings,
                "notice": notice,
                "result": result,
            }
        )
        if request is not UNSET:
            field_dict["request"] = request
        if verdict is not UNSET:
            field_dict["verdict"] = verdict
        if working is not UNSET:
            field_dict["working"] = working

        return field_dict

    @classmethod
    def from_dict(cls: type[T], src_dict: Mapping[str, Any]) -> T:
        from ..models.assumption import Assumption  # noqa: PLC0415
        from ..models.basis import Basis  # noqa: PLC0415
        from ..models.caution import Caution  # noqa: PLC0415
        from ..models.finding import Finding  # noqa: PLC0415
        from ..models.step import Step  # noqa: PLC0415
        from ..models.voltage_drop_request import VoltageDropRequest  # noqa: PLC0415
        from ..models.voltage_drop_result import VoltageDropResult  # noqa: PLC0415

        d = dict(src_dict)
        assumptions = []
        _assumptions = d.pop("assumptions")
        for assumptions_item_data in _assumptions:
            assumptions_item = Assumption.from_dict(assumptions_item_data)

            assumptions.append(assumptions_item)

        basis = Basis.from_dict(d.pop("basis"))

        cautions = []
        _cautions = d.pop("cautions")
        for cautions_item_data in _cautions:
            cautions_item = Caution.from_dict(cautions_item_data)

            cautions.append(cautions_item)

        findings = []
        _findings = d.pop("findings")
        for findings_item_data in _findings:
            findings_item = Finding.from_dict(findings_item_data)

            findings.append(findings_item)

        notice = d.pop("notice")

        result = VoltageDropResult.from_dict(d.pop("result"))

        _request = d.pop("request", UNSET)
        request: VoltageDropRequest | Unset
        if isinstance(_request, Unset):
            request = UNSET
        else:
            request = VoltageDropRequest.from_dict(_request)

        _verdict = d.pop("verdict", UNSET)
        verdict: Verdict | Unset
        if isinstance(_verdict, Unset):
            verdict = UNSET
        else:
            verdict = Verdict(_verdict)

        _working = d.pop("working", UNSET)
        working: list[Step] | Unset = UNSET
        if _working is not UNSET:
            working = []
            for working_item_data in _working:
                working_item = Step.from_dict(working_item_data)

                working.append(working_item)

        voltage_drop_answer = cls(
            assumptions=assumptions,
            basis=basis,
            cautions=cautions,
            findings=findings,
            notice=notice,
            result=result,
            request=request,
            verdict=verdict,
            working=working,
        )

        voltage_drop_answer.additional_properties = d
        return voltage_drop_answer

    @property
    def additional_keys(self) -> list[str]:
        return list(self.additional_properties.keys())

    def __getitem__(self, key: str) -> Any:
        return self.additional_properties[key]

    def __setitem__(self, key: str, value: Any) -> None:
        self.additional_properties[key] = value

    def __delitem__(self, key: str) -> None:
        del self.additional_properties[key]

    def __contains__(self, key: str) -> bool:
        return key in self.additional_properties
