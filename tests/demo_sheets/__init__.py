"""The demo's vendor files: invented vendors, one invented market, the shapes that real sheets come in.

`python -m tests.demo_sheets` rewrites sample_quotes/. What is planted in which file stands in
resources/demo/scenario.toml.
"""
