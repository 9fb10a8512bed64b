from enum import StrEnum


class WiringMethod(StrEnum):
    DIRECT_BURIED_CABLE = "direct_buried_cable"
    GFCI_RESIDENTIAL = "gfci_residential"
    LOW_VOLTAGE_CONTROL = "low_voltage_control"
    NONMETALLIC_RACEWAY = "nonmetallic_raceway"
    RMC_IMC = "rmc_imc"

    def __str__(self) -> str:
        return str(self.value)
