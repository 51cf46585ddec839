# Completion of platewright for fish. tests/promises.py holds it against what --help prints.
complete -c platewright -n __fish_use_subcommand -s h -l help -d 'help'
complete -c platewright -n __fish_use_subcommand -l version -d 'version'
complete -c platewright -n __fish_use_subcommand -a check -d 'say whether the tool holds, and why'
complete -c platewright -n '__fish_seen_subcommand_from check' -s h -l help -d 'help'
complete -c platewright -n '__fish_seen_subcommand_from check' -l json
complete -c platewright -n '__fish_seen_subcommand_from check' -l text
complete -c platewright -n '__fish_seen_subcommand_from check' -l reasons
complete -c platewright -n '__fish_seen_subcommand_from check' -l at -x
complete -c platewright -n '__fish_seen_subcommand_from check' -l rack -r -F
complete -c platewright -n __fish_use_subcommand -a ladder -d 'the same tool in every stock thickness'
complete -c platewright -n '__fish_seen_subcommand_from ladder' -s h -l help -d 'help'
complete -c platewright -n '__fish_seen_subcommand_from ladder' -l json
complete -c platewright -n '__fish_seen_subcommand_from ladder' -l rack -r -F
complete -c platewright -n __fish_use_subcommand -a tool -d 'what a finished tool may be used for'
complete -c platewright -n '__fish_seen_subcommand_from tool' -s h -l help -d 'help'
complete -c platewright -n '__fish_seen_subcommand_from tool' -l json
complete -c platewright -n __fish_use_subcommand -a rack -d 'which pieces on the rack will do'
complete -c platewright -n '__fish_seen_subcommand_from rack' -s h -l help -d 'help'
complete -c platewright -n '__fish_seen_subcommand_from rack' -l json
complete -c platewright -n '__fish_seen_subcommand_from rack' -l rack -r -F
complete -c platewright -n '__fish_seen_subcommand_from rack' -l prefer -x -a 'least-waste lightest thickest-margin quickest-cut'
complete -c platewright -n __fish_use_subcommand -a propose -d 'plates for the stations, load and screw'
complete -c platewright -n '__fish_seen_subcommand_from propose' -s h -l help -d 'help'
complete -c platewright -n '__fish_seen_subcommand_from propose' -l json
complete -c platewright -n __fish_use_subcommand -a cut -d 'write the cut file'
complete -c platewright -n '__fish_seen_subcommand_from cut' -s h -l help -d 'help'
complete -c platewright -n '__fish_seen_subcommand_from cut' -s o -l output -r -F
complete -c platewright -n '__fish_seen_subcommand_from cut' -l anyway
complete -c platewright -n '__fish_seen_subcommand_from cut' -l path
complete -c platewright -n '__fish_seen_subcommand_from cut' -l r12
complete -c platewright -n '__fish_seen_subcommand_from cut' -l feed -x
complete -c platewright -n '__fish_seen_subcommand_from cut' -l pierce -x
complete -c platewright -n '__fish_seen_subcommand_from cut' -l on -x
complete -c platewright -n __fish_use_subcommand -a solid -d 'write the plate as a solid'
complete -c platewright -n '__fish_seen_subcommand_from solid' -s h -l help -d 'help'
complete -c platewright -n '__fish_seen_subcommand_from solid' -s o -l output -r -F
complete -c platewright -n '__fish_seen_subcommand_from solid' -l anyway
complete -c platewright -n '__fish_seen_subcommand_from solid' -l stack
complete -c platewright -n __fish_use_subcommand -a sheet -d 'write the shop sheet or the paper template'
complete -c platewright -n '__fish_seen_subcommand_from sheet' -s h -l help -d 'help'
complete -c platewright -n '__fish_seen_subcommand_from sheet' -s o -l output -r -F
complete -c platewright -n '__fish_seen_subcommand_from sheet' -l anyway
complete -c platewright -n '__fish_seen_subcommand_from sheet' -l template
complete -c platewright -n '__fish_seen_subcommand_from sheet' -l paper -x -a 'a4 letter'
complete -c platewright -n '__fish_seen_subcommand_from sheet' -l language -x -a 'de en'
complete -c platewright -n '__fish_seen_subcommand_from sheet' -l rack -r -F
