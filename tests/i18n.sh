#!/usr/bin/env bash
# Every sentence of the program has a translation, finished and with its places. Reads nothing that is built.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
copy=$(mktemp -d)
trap 'rm -rf "$copy"' EXIT
cp resources/i18n/platewright_*.ts "$copy"
bash resources/i18n/update.sh "$copy"
failed=0
for file in resources/i18n/platewright_*.ts; do
  if ! diff -u <(grep -h '<source>' "$file" | sort) <(grep -h '<source>' "$copy/$(basename "$file")" | sort); then
    echo "^ $file: what is said has changed; bash resources/i18n/update.sh, then translate what is new" >&2
    failed=1
  fi
  perl -0777 -e '
    binmode STDOUT, ":raw";
    my ($file) = @ARGV; open my $in, "<", $file or die "$file: $!"; my $text = <$in>; my $bad = 0;
    sub places { my %seen; $seen{$_} = 1 for $_[0] =~ /(%[1-9n]|\{\d+\})/g; join " ", sort keys %seen }
    for my $context ($text =~ /<context>(.*?)<\/context>/sg) {
      my ($name) = $context =~ /<name>(.*?)<\/name>/;
      print "$file: \"$name\" is no class: lupdate could not tell whose tr() it is\n" and $bad = 1
        unless $name eq "Say" || $name =~ /^pw::/;
      for my $message ($context =~ /<message.*?>(.*?)<\/message>/sg) {
        my ($source) = $message =~ /<source>(.*?)<\/source>/s;
        my ($body) = $message =~ /<translation[^>]*>(.*?)<\/translation>/s;
        my $open = $message =~ /type="(?:unfinished|obsolete|vanished)"/ || !defined $body || $body !~ /\S/;
        print "$file: not translated: $source\n" and $bad = 1 if $open;
        next if $open;
        my @forms = $body =~ /<numerusform>(.*?)<\/numerusform>/sg;
        for my $said (@forms ? @forms : $body) {
          print "$file: places differ: $source | $said\n" and $bad = 1 if places($source) ne places($said);
        }
      }
    }
    exit $bad' "$file" || failed=1
done
[ "$failed" -eq 0 ] && echo 'i18n: everything that is said is translated'
exit "$failed"
