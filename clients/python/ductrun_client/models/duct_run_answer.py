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
    from ..models.duct_run_request import DuctRunRequest
    from ..models.duct_run_result import DuctRunResult
    from ..models.finding import Finding
    from ..models.step import Step
    from ..models.suggestions import Suggestions


T = TypeVar("T", bound="DuctRunAnswer")


@_attrs_define
class DuctRunAnswer:
    """The answer of duct-run with everything that defends it.

    Attributes:
        assumptions (list[Assumption]):
        basis (Basis): What the answer rests on.
        cautions (list[Caution]):
        findings (list[Finding]):
        notice (str):
        result (DuctRunResult): The run from end to end.
        request (DuctRunRequest | Unset): A run from end to end.
        suggestions (Suggestions | Unset): What would make a run comply, each change of one thing verified by running
            it.
        verdict (Verdict | Unset): What an answer, or a part of it, says of the limits: kept, broken, or not judged for
            want of something.
        working (list[Step] | Unset):
    """

    assumptions: list[Assumption]
    basis: Basis
    cautions: list[Caution]
    findings: list[Finding]
    notice: str
    result: DuctRunResult
    request: DuctRunRequest | Unset = UNSET
    suggestions: Suggestions | Unset = UNSET
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

        suggestions: dict[str, Any] | Unset = UNSET
        if not isinstance(self.suggestions, Unset):
            suggestions = self.suggestions.to_dict()

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
        if suggestions is not UNSET:
            field_dict["suggestions"] = suggestions
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
        from ..models.duct_run_request import DuctRunRequest  # noqa: PLC0415
        from ..models.duct_run_result import DuctRunResult  # noqa: PLC0415
        from ..models.finding import Finding  # noqa: PLC0415
        from ..models.step import Step  # noqa: PLC0415
        from ..models.suggestions import Suggestions  # noqa: PLC0415

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

        result = DuctRunResult.from_dict(d.pop("result"))

        _request = d.pop("request", UNSET)
        request: DuctRunRequest | Unset
        if isinstance(_request, Unset):
            request = UNSET
        else:
            request = DuctRunRequest.from_dict(_request)

        _suggestions = d.pop("suggestions", UNSET)
        suggestions: Suggestions | Unset
        if isinstance(_suggestions, Unset):
            suggestions = UNSET
        else:
            suggestions = Suggestions.from_dict(_suggestions)

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

        duct_run_answer = cls(
            assumptions=assumptions,
            basis=basis,
            cautions=cautions,
            findings=findings,
            notice=notice,
            result=result,
            request=request,
            suggestions=suggestions,
            verdict=verdict,
            working=working,
        )

        duct_run_answer.additional_properties = d
        return duct_run_answer

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
