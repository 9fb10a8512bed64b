from enum import StrEnum


class BendMade(StrEnum):
    FACTORY_ELBOW = "factory_elbow"
    FIELD_BEND = "field_bend"
    LAID_ON_CURVE = "laid_on_curve"

    def __str__(self) -> str:
        return str(self.value)
