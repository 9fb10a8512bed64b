"""Settings every test shares."""

from hypothesis import HealthCheck, settings

settings.register_profile(
    "ductrun", deadline=None, derandomize=True, max_examples=60, suppress_health_check=[HealthCheck.too_slow]
)
settings.load_profile("ductrun")
