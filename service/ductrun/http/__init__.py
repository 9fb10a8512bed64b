"""Everything HTTP and nothing else: routes, strict JSON, problem details, contract, docs, health."""
