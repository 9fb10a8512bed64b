from enum import StrEnum


class BendMade(StrEnum):
    FACTORY_ELBOW = "factory_elbow"
    FIELD_BEND = "field_bend"

    def __str__(self) -> str:
        return str(self.value)
