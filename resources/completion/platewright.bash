# Completion of platewright for bash. tests/promises.py holds it against what --help prints.
_platewright() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} command=${COMP_WORDS[1]} options files=json
  COMPREPLY=()
  case $command in
    check) options='--json --text --reasons --at --rack --help' ;;
    ladder) options='--json --rack --help' ;;
    tool) options='--json --help' ;;
    rack) options='--json --rack --prefer --help' ;;
    propose) options='--json --help' ;;
    cut) options='--output --anyway --path --r12 --feed --pierce --on --help' ;;
    solid) options='--output --anyway --stack --help' ;;
    sheet) options='--output --anyway --template --paper --language --rack --help' ;;
    *) options='--help --version' ;;
  esac
  case $before in
    --prefer) COMPREPLY=($(compgen -W 'least-waste lightest thickest-margin quickest-cut' -- "$word")); return ;;
    --paper) COMPREPLY=($(compgen -W 'a4 letter' -- "$word")); return ;;
    --language) COMPREPLY=($(compgen -W 'de en' -- "$word")); return ;;
    --at | --feed | --pierce | --on) return ;;
    -o | --output)
      case $command in
        cut) files='dxf|svg|ngc' ;;
        solid) files=step ;;
        sheet) files=pdf ;;
      esac ;;
  esac
  if [[ $word == -* ]]; then
    COMPREPLY=($(compgen -W "$options" -- "$word"))
    return
  fi
  # Folders and the files of the kind, names with blanks kept whole.
  compopt -o filenames 2>/dev/null
  local name
  while IFS= read -r name; do
    if [[ -d $name ]] || [[ $name =~ \.($files)$ ]]; then
      COMPREPLY+=("$name")
    fi
  done < <(compgen -f -- "$word")
  if ((COMP_CWORD == 1)); then
    COMPREPLY+=($(compgen -W 'check ladder tool rack propose cut solid sheet' -- "$word"))
  fi
}
complete -F _platewright platewright
