# Completes the commands, flags and values of tipline in bash.

_tipline_ids() {
	local word
	for word in "${words[@]}"; do
		[[ $word == *.tipline && -r $word ]] && sed -n 's/.*"id": *"\([^"]*\)".*/\1/p' "$word"
	done
}

_tipline() {
	local cur prev words cword
	_init_completion -n = || return
	local commands="packet template figures findings stock printer sample guide version help"

	if ((cword == 1)); then
		_filedir tipline
		COMPREPLY+=($(compgen -W "$commands" -- "$cur"))
		return
	fi

	local kinds="blank grinding setting depth dividing shroud crossing scribing drilling stack depthing train"
	case $prev in
	-out | --out) _filedir; return ;;
	-paper | --paper) COMPREPLY=($(compgen -W "a4 a3 letter legal tabloid" -- "$cur")); return ;;
	-wheel | --wheel) COMPREPLY=($(compgen -W "$(_tipline_ids)" -- "$cur")); return ;;
	-kind | --kind) COMPREPLY=($(compgen -W "$kinds" -- "$cur")); return ;;
	-kinds | --kinds)
		COMPREPLY=($(compgen -P "${cur%"${cur##*,}"}" -W "$kinds cover stock cautions" -- "${cur##*,}"))
		compopt -o nospace
		return
		;;
	-side | --side) COMPREPLY=($(compgen -W "rake clearance" -- "$cur")); return ;;
	-look | --look) COMPREPLY=($(compgen -W "mirrored outlines thin punch black" -- "$cur")); return ;;
	-lang | --lang) COMPREPLY=($(compgen -W "en de fr" -- "$cur")); return ;;
	-as | --as)
		case ${words[1]} in
		packet) COMPREPLY=($(compgen -W "pdf zip" -- "$cur")) ;;
		*) COMPREPLY=($(compgen -W "pdf svg dxf png" -- "$cur")) ;;
		esac
		return
		;;
	-copies | --copies | -scale | --scale | -printer | --printer | -across | --across | -along | --along) return ;;
	esac

	local flags=
	case ${words[1]} in
	packet) flags="-out -paper -copies -wheel -kinds -as -printer -look -together -apart -lang" ;;
	template) flags="-wheel -kind -as -out -scale -side -paper -printer -look -lang" ;;
	figures) flags="-json -lang" ;;
	findings) flags="-lang" ;;
	stock) flags="-csv -lang" ;;
	printer) flags="-out -paper -across -along -again -lang" ;;
	sample) flags="-lang" ;;
	guide) flags="-out -lang" ;;
	version) flags="-lang" ;;
	help) flags="-lang" ;;
	esac
	if [[ $cur == -* ]]; then
		COMPREPLY=($(compgen -W "$flags" -- "$cur"))
	elif [[ ${words[1]} == sample ]]; then
		COMPREPLY=($(compgen -W "$(tipline sample 2>/dev/null | cut -d' ' -f1)" -- "$cur"))
	elif [[ ${words[1]} == guide ]]; then
		COMPREPLY+=($(compgen -W "$(tipline guide 2>/dev/null | cut -d' ' -f1)" -- "$cur"))
	else
		_filedir tipline
	fi
}

complete -F _tipline tipline
