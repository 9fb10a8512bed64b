"""What a run takes: entries part by part, summed up to lines, rounded and priced."""
