#!/usr/bin/env bash
# Brings the translation files up to date with the words of the program: new ones come in unfinished, those that are
# gone go out. Usage: bash resources/i18n/update.sh [FOLDER OF THE .ts FILES]
# core, geometry and app/engine say() their sentences (core/util/say.h). lupdate knows tr(), so it reads a copy of the
# sources in which say is spelled that way, all in one context.
set -euo pipefail
tree=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
into=$(cd "${1:-$tree/resources/i18n}" && pwd)
lupdate=$(command -v lupdate6 || command -v /usr/lib/qt6/bin/lupdate || command -v lupdate)
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
cd "$tree"
find core geometry app \( -name '*.cpp' -o -name '*.h' \) ! -path core/util/say.h ! -path core/util/say.cpp -print0 |
  xargs -0 cp --parents -t "$copy"
find "$copy" -type f -print0 | xargs -0 perl -0777 -pi -e '
  s/\bsayMany\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)/Say::tr($1, nullptr, 1/g; s/\b(?:say|PW_SAY)\(\s*(?=")/Say::tr(/g'
# Sentences and sources in the tables of resources/ (core says them where it reads a row).
perl -e '
  for my $file (@ARGV) {
    open my $in, "<", $file or die "$file: $!";
    my @names;
    while (my $line = <$in>) {
      next if $line =~ /^#/;
      chomp $line;
      my @cells;
      push @cells, defined $1 ? $1 : $2 while $line =~ /\G(?:"((?:[^"]|"")*)"|([^,]*))(?:,|$)/g and (@cells < 99);
      s/""/\\"/g for @cells;
      if (!@names) { @names = @cells; next }
      for my $i (0 .. $#names) {
        my $text = $cells[$i] // "";
        my $said = $names[$i] =~ /^(says|source|expansion_source)$/ && $text =~ /[a-z]{2}/ ||
                   $names[$i] eq "name" && $text =~ /^[a-z].* /;
        print "const char* said = Say::tr(\"$text\");\n" if $said;
      }
    }
  }' resources/*.csv >"$copy/tables.cpp"
for file in "$into"/platewright_*.ts; do
  "$lupdate" "$copy" -I "$copy" -locations none -no-obsolete -no-ui-lines -ts "$file" 2>"$copy/said" >/dev/null ||
    { cat "$copy/said" >&2; exit 1; }
done
