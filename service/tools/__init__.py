"""What writes things: contract, clients, factors, pages, benchmarks. Commands of the repository, not packaged."""
