"""Write a corpus: python -m tests.corpus --out FOLDER --seed N [--families GLOB] [--count K]"""

import argparse
import json
from pathlib import Path

from tests.corpus.registry import corpus


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--out", type=Path, required=True)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--families", default="*", help="a glob of family names")
    parser.add_argument("--count", type=int, default=1, help="files of each family")
    chosen = parser.parse_args()
    chosen.out.mkdir(parents=True, exist_ok=True)
    files = []
    for made in corpus(chosen.seed, chosen.families, chosen.count):
        (chosen.out / made.name).write_bytes(made.data)
        files.append(made.truth)
    truth = json.dumps({"files": files}, ensure_ascii=False, indent=1)
    (chosen.out / "truth.json").write_text(truth, encoding="utf-8")
    print(f"{len(files)} files, {sum(len(file['lines']) for file in files)} lines of truth in {chosen.out}")


if __name__ == "__main__":
    main()
