"""Reading ease of the English texts: `pip install textstat==0.7.3 setuptools`, then `python3 tests/reading_ease.py`.

Flesch reading ease by `textstat`; sentence lengths of texts with a full stop. Prints, judges nothing.
"""

import re
import statistics
from pathlib import Path

import textstat

FOLDER = Path(__file__).parent.parent / "src/i18n/en"


def sentences(source):
    """Pairs of key and sentence; a plural counts with its last variant, a value as one word."""
    for message in re.split(r"\n(?=[a-z])", source):
        key, equals, text = message.partition(" = ")
        if not equals or "#" in key:
            continue
        text = re.sub(r"\{ \$\w+ ->.*?\*\[other\] (.*?)\n\}", r"\1", text.split("\n#")[0].split("\n\n")[0], flags=re.S)
        text = re.sub(r"\{ \$\w+ \}", "five", text)
        for sentence in re.split(r"(?<=[.?!])\s+", text.strip()):
            if sentence.endswith((".", "?", "!")) and " " in sentence:
                yield key, sentence


found = [pair for path in sorted(FOLDER.glob("*.ftl")) for pair in sentences(path.read_text())]
lengths = {key + ": " + text: len(text.split()) for key, text in found}
print(f"{len(found)} sentences, Flesch reading ease {textstat.flesch_reading_ease(' '.join(text for _, text in found)):.0f}")
print(f"median {statistics.median(lengths.values()):.0f} words, {sum(n > 25 for n in lengths.values())} of more than 25:")
for text, words in sorted(lengths.items(), key=lambda item: -item[1]):
    if words > 25:
        print(f"  {words} {text}")
