#!/usr/bin/env bash
# The arrows of the house: core <- geometry <- app/engine <- app/paper <- app/cli, app/gui. None points back, and what
# belongs to one layer stays there.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
failed=0
forbid() { # where, what, why
  if grep -rnE --include='*.h' --include='*.cpp' "$2" $1; then
    echo "^ $3" >&2
    failed=1
  fi
}
forbid core '#include [<"](geometry|app)/' 'core uses nothing above it'
forbid geometry '#include [<"]app/' 'geometry uses nothing above it'
forbid app/engine '#include [<"]app/(cli|gui|paper)/' 'the engine knows no screen and no paper'
forbid app/tongues '#include [<"]app/(cli|gui|paper|engine)/' 'the languages know core and Qt only'
forbid app/paper '#include [<"]app/(cli|gui)/' 'paper uses the engine and nothing above it'
forbid app/paper '#include <Q(tWidgets|Widget|Application|MainWindow|Dialog|Print)' 'paper is painted without widgets and without a printer'
forbid app/cli '#include <Q[A-Z]' 'the command line knows no window'
forbid 'core geometry app/engine' '#include <Q[A-Z]' 'no Qt below the window'
forbid 'core app' '#include <(CGAL|Standard_|BRep|gp_|TopoDS|STEPC|XCAF|clipper)' 'meshers, solids and polygon libraries stay in geometry'
if grep -rlE --include='*.h' '#include <(CGAL|Standard_|BRep|gp_|TopoDS|STEPC|XCAF|clipper|polyclipping)' geometry; then
  echo '^ outside libraries stay private to a .cpp' >&2
  failed=1
fi
# What SECURITY.md says: a file from a stranger is data. Nothing is run, no address opened, no network used, and no text of
# a job is taken for HTML.
forbid 'core geometry app' '(^|[^A-Za-z_.>])(system|popen|fork|vfork|posix_spawnp?|exec[lv]p?e?)\(' 'the program runs no other program'
forbid 'core geometry app' 'QProcess|QDesktopServices|openUrl|QNetwork|Qt(Network|WebEngine)|QTcp|QUdp|QLocalS|QSslS' 'no other program, no address, no network'
forbid 'core geometry app' '#include <(sys/socket|netdb|netinet/in|curl/curl|spawn)' 'no network, no other program'
forbid 'core geometry app' 'setOpenExternalLinks\(true|setOpenLinks\(true' 'a link of the help goes to a figure or a page of it'
forbid 'app/gui' '\bQ(Label|StaticText|ToolTip)\b|setMarkdown|insertHtml|setTextFormat\(Qt::(Rich|Auto)' 'text is shown by our own blocks, which know no HTML'
if grep -rnE --include='*.cpp' 'setToolTip\(' app/gui | grep -vE 'setToolTip\((plainTip\(|tr\("[^"]*"\)\)|QString\(\)\)|can(Un|Re)do \? plainTip)'; then
  echo '^ a tool tip takes HTML for HTML: plainTip() (app/gui/widgets/plain_tip.h)' >&2
  failed=1
fi
if grep -rnE --include='*.cpp' 'setHtml\(' app | grep -v '^app/gui/help/help_window.cpp:.*setHtml(helpPage(m_page))'; then
  echo '^ only the help, whose pages are ours, is HTML' >&2
  failed=1
fi
if [ "$(grep -cE 'QMessageBox box\(' app/gui/questions.cpp)" -ne "$(grep -c 'setTextFormat(Qt::PlainText)' app/gui/questions.cpp)" ] ||
  grep -rlE --include='*.cpp' 'QMessageBox' app/gui | grep -qv '^app/gui/questions.cpp$'; then
  echo 'a message box takes HTML for HTML: setTextFormat(Qt::PlainText), in app/gui/questions.cpp' >&2
  failed=1
fi
json=$(grep -rlE '#include <nlohmann' core geometry app | wc -l)
if [ "$json" -gt 2 ]; then
  echo "the JSON header is in $json files, wanted 2 at most" >&2
  failed=1
fi
[ "$failed" -eq 0 ] && echo 'layers: every arrow points down'
exit "$failed"
