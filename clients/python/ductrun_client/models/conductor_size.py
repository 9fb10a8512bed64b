from enum import StrEnum


class ConductorSize(StrEnum):
    AWG_1 = "1 AWG"
    AWG_10 = "10 AWG"
    AWG_12 = "12 AWG"
    AWG_14 = "14 AWG"
    AWG_16 = "16 AWG"
    AWG_18 = "18 AWG"
    AWG_1_0 = "1/0 AWG"
    AWG_2 = "2 AWG"
    AWG_2_0 = "2/0 AWG"
    AWG_3 = "3 AWG"
    AWG_3_0 = "3/0 AWG"
    AWG_4 = "4 AWG"
    AWG_4_0 = "4/0 AWG"
    AWG_6 = "6 AWG"
    AWG_8 = "8 AWG"
    KCMIL_1000 = "1000 kcmil"
    KCMIL_1250 = "1250 kcmil"
    KCMIL_1500 = "1500 kcmil"
    KCMIL_1750 = "1750 kcmil"
    KCMIL_2000 = "2000 kcmil"
    KCMIL_250 = "250 kcmil"
    KCMIL_300 = "300 kcmil"
    KCMIL_350 = "350 kcmil"
    KCMIL_400 = "400 kcmil"
    KCMIL_500 = "500 kcmil"
    KCMIL_600 = "600 kcmil"
    KCMIL_700 = "700 kcmil"
    KCMIL_750 = "750 kcmil"
    KCMIL_800 = "800 kcmil"
    KCMIL_900 = "900 kcmil"

    def __str__(self) -> str:
        return str(self.value)
