# Run by cpack over the installed tree, before it is packed: what Debian wants of a package and an installation by hand
# does not have.
cmake_minimum_required(VERSION 3.25)
file(GLOB_RECURSE docs LIST_DIRECTORIES false ${CPACK_TEMPORARY_INSTALL_DIRECTORY}/usr/share/doc/platewright/copyright)
if(NOT docs)
  message(FATAL_ERROR "Nothing is installed below ${CPACK_TEMPORARY_INSTALL_DIRECTORY}")
endif()
get_filename_component(doc ${docs} DIRECTORY)
get_filename_component(usr ${doc}/../../.. ABSOLUTE)

# The text of the GPL is on every Debian system, and `copyright` says where.
file(REMOVE ${doc}/LICENSE)

if(DEFINED ENV{SOURCE_DATE_EPOCH})
  set(when "@$ENV{SOURCE_DATE_EPOCH}")
else()
  set(when "now")
endif()
execute_process(COMMAND ${CMAKE_COMMAND} -E env LC_ALL=C TZ=UTC date -u -R -d ${when} OUTPUT_VARIABLE date
  OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
file(WRITE ${doc}/changelog.Debian "platewright (${CPACK_DEBIAN_PACKAGE_VERSION}-${CPACK_DEBIAN_PACKAGE_RELEASE}) unstable; urgency=medium

  * What changed for its users is in changelog.gz.

 -- ${CPACK_DEBIAN_PACKAGE_MAINTAINER}  ${date}
")
execute_process(COMMAND gzip -9nf ${doc}/changelog.Debian COMMAND_ERROR_IS_FATAL ANY)

# (file(INSTALL) would put it under DESTDIR once more.)
set(overrides ${usr}/share/lintian/overrides)
file(MAKE_DIRECTORY ${overrides})
file(COPY_FILE ${CPACK_PW_SOURCE}/resources/package/lintian-overrides ${overrides}/platewright)
file(CHMOD ${overrides} ${usr}/share/lintian DIRECTORY_PERMISSIONS
  OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
file(CHMOD ${overrides}/platewright ${doc}/changelog.Debian.gz FILE_PERMISSIONS OWNER_READ OWNER_WRITE GROUP_READ WORLD_READ)
