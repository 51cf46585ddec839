# What the program calls itself: the version of project(), and in a git clone how far the clone is from that release.
#   0.1.0                    the release, tag v0.1.0
#   0.1.0+12.g8a93623        twelve commits after it
#   0.1.0~262.g8a93623       no such release yet: so many commits in all ("~" sorts before 0.1.0 in Debian)
#   ....dirty                with changes that are not committed
# No time, no host, no folder: the same commit gives the same text everywhere. Used while configuring, and as a script:
#   cmake -DVERSION=0.1.0 -DSOURCE=FOLDER -DOUT=FILE.cpp -P version.cmake
cmake_minimum_required(VERSION 3.25)

function(pw_version version source result)
  set(${result} ${version} PARENT_SCOPE)
  find_program(PW_GIT git)
  mark_as_advanced(PW_GIT)
  if(NOT PW_GIT)
    return()
  endif()
  # A folder that somebody unpacked inside another clone is not that clone.
  execute_process(COMMAND ${PW_GIT} -C ${source} rev-parse --show-prefix OUTPUT_VARIABLE below RESULT_VARIABLE failed
    OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
  if(failed OR NOT below STREQUAL "")
    return()
  endif()
  execute_process(COMMAND ${PW_GIT} -C ${source} rev-parse --short=7 HEAD OUTPUT_VARIABLE commit RESULT_VARIABLE failed
    OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
  if(failed)
    return()
  endif()
  execute_process(COMMAND ${PW_GIT} -C ${source} rev-list --count v${version}..HEAD OUTPUT_VARIABLE since
    RESULT_VARIABLE unreleased OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
  set(text ${version})
  if(unreleased)
    execute_process(COMMAND ${PW_GIT} -C ${source} rev-list --count HEAD OUTPUT_VARIABLE since
      OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
    string(APPEND text "~${since}.g${commit}")
  elseif(since GREATER 0)
    string(APPEND text "+${since}.g${commit}")
  endif()
  execute_process(COMMAND ${PW_GIT} -C ${source} --no-optional-locks status --porcelain --untracked-files=no
    OUTPUT_VARIABLE changes ERROR_QUIET)
  if(NOT changes STREQUAL "")
    if(text STREQUAL version)
      string(APPEND text "+dirty")
    else()
      string(APPEND text ".dirty")
    endif()
  endif()
  set(${result} ${text} PARENT_SCOPE)
endfunction()

if(DEFINED OUT)
  pw_version(${VERSION} ${SOURCE} text)
  set(content "// Made by resources/package/version.cmake.\n#include \"app/version/version.h\"\n\nnamespace pw {\n\nconst char* versionText() {\n    return \"${text}\";\n}\n\n} // namespace pw\n")
  set(before "")
  if(EXISTS ${OUT})
    file(READ ${OUT} before)
  endif()
  if(NOT content STREQUAL before) # the same text is not written again, so nothing is built again
    file(WRITE ${OUT} "${content}")
  endif()
endif()
