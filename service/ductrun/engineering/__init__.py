"""The formulas, one module a subject: plain numbers in SI, no web, no files, no units objects.

Conduit fill alone works in square inches and in decimals, because the code's inch tables decide and a sum of printed
areas can tie with a printed limit.
"""
